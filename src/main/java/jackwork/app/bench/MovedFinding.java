package jackwork.app.bench;

import jackwork.app.wire.Places;
import jackwork.check.Finding;
import jackwork.check.Sentence;
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
        Sentence question,
        boolean turned,
        @Nullable MovedSide then,
        @Nullable MovedSide now) {

    record MovedSide(String status, @Places(4) @Nullable Double margin, String unit, Sentence why) {}

    /** Those that turned first; not those whose margin moves by less than is shown. */
    static List<MovedFinding> of(List<UseMeasured.Moved> moved) {
        return moved.stream()
                .filter(each -> each.turned() || seen(each.then()) != seen(each.now()))
                .sorted((a, b) -> Boolean.compare(b.turned(), a.turned()))
                .map(each -> new MovedFinding(each.question(), each.turned(), side(each.then()), side(each.now())))
                .toList();
    }

    /** The margin as it is shown: what moves less than that has not moved. */
    private static double seen(@Nullable Finding finding) {
        Double margin = finding == null ? null : finding.margin();
        return margin == null ? Double.NEGATIVE_INFINITY : Math.rint(1e4 * margin);
    }

    private static @Nullable MovedSide side(@Nullable Finding finding) {
        return finding == null
                ? null
                : new MovedSide(finding.status().word(), finding.margin(), finding.unit(), finding.why());
    }
}
