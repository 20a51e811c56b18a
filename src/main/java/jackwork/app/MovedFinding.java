package jackwork.app;

import jackwork.check.Finding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A finding that two checks answer differently.
 *
 * @param turned whether its status is another, not only its margin
 * @param then null where it was not asked
 * @param now null where it is not asked
 */
record MovedFinding(
        String question,
        boolean turned,
        @Nullable MovedSide then,
        @Nullable MovedSide now) {

    record MovedSide(String status, @Places(4) @Nullable Double margin, String unit, String why) {}

    /** Those that turned first. */
    static List<MovedFinding> of(List<UseMeasured.Moved> moved) {
        return moved.stream()
                .sorted((a, b) -> Boolean.compare(b.turned(), a.turned()))
                .map(each -> new MovedFinding(each.question(), each.turned(), side(each.then()), side(each.now())))
                .toList();
    }

    private static @Nullable MovedSide side(@Nullable Finding finding) {
        return finding == null
                ? null
                : new MovedSide(finding.status().word(), finding.margin(), finding.unit(), finding.why());
    }
}
