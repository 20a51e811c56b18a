package jackwork.motion.kind;

import jackwork.design.LimitEntry;
import jackwork.motion.model.DistanceStop;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.DistanceLimit;

/** A limit of the distance of two points: {@link DistanceStop}. */
public final class LimitKind extends MechanismKind<LimitEntry, DistanceLimit> {

    public LimitKind() {
        super("limits", "limit", LimitEntry.class, DistanceLimit.class, DistanceLimit::of);
    }

    @Override
    public void compile(DistanceLimit link, MechanismBuilder builder, int[] number) {
        builder.distanceStop(
                link.name(), number[link.a()], link.onA(), number[link.b()], link.onB(), link.least(), link.most());
    }

    @Override
    public void describe(DistanceLimit link, Description out) {
        out.put("from", link.onA());
        out.put("to", link.onB());
        out.put("least", link.least(), 6);
        out.put("most", link.most(), 6);
    }
}
