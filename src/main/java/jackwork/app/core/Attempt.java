package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What would come of a plan.
 *
 * @param shift where it stands on its box
 * @param complaints why it cannot be made yet; none: it can
 * @param scene how it would look, with what the program adds
 * @param motion how it would move
 */
public record Attempt(
        Pair shift, List<Complaint> complaints, @Nullable Scene scene, Report.@Nullable Motion motion)
        implements Payload {

    /**
     * @param about the part or point that it is about; empty when it is about the whole
     * @param words what is wrong and what to do
     */
    public record Complaint(String about, String words) {}
}
