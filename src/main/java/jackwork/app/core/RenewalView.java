package jackwork.app.core;

import jackwork.app.wire.Payload;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whether files of a workshop are of an earlier format, and what one step would make of them.
 *
 * @param version of what was looked at
 * @param files that the step would change, by their names from the workshop; empty when none is of an earlier format
 * @param lost what would not be carried over, a line each
 * @param back files of the last step, which can be taken back; null when there is none
 * @param backLost what was told of it when it was made
 */
public record RenewalView(
        String version,
        List<String> files,
        List<String> lost,
        @Nullable List<String> back,
        List<String> backLost) implements Payload {}
