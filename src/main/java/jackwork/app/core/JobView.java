package jackwork.app.core;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.app.wire.Report;
import jackwork.builds.Tune;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long work stands.
 *
 * @param version of the files that it works on
 * @param size 0 where it cannot be told beforehand
 * @param lines what it said so far
 * @param builds what came of the pieces so far
 * @param packed the pack that it made
 */
public record JobView(
        int number,
        String design,
        String version,
        State state,
        String problem,
        int done,
        int size,
        List<String> lines,
        Report.@Nullable Builds builds,
        @Nullable Proposal proposal,
        @Nullable Packed packed)
        implements Payload {

    enum State {
        RUNNING,
        DONE,
        STOPPED,
        FAILED
    }

    /** Better numbers, with what pieces do before and after. */
    record Proposal(List<Proposed> numbers, Report.Builds before, Report.Builds after) {

        static Proposal of(Tune.Proposal found) {
            List<Proposed> numbers = new ArrayList<>();
            found.numbers().forEach((path, value) -> numbers.add(new Proposed(path, value)));
            return new Proposal(numbers, ReportMaker.builds(found.before()), ReportMaker.builds(found.after()));
        }
    }

    record Proposed(String path, @Places(4) double value) {}

    /**
     * A pack that can be fetched by the work's number.
     *
     * @param file its name
     * @param files in it
     */
    public record Packed(String file, int files, int bytes) {}
}
