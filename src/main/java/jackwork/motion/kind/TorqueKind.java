package jackwork.motion.kind;

import jackwork.design.TorqueEntry;
import jackwork.motion.model.Loads;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.Torque;

/** A steady torque: {@link Loads}. */
public final class TorqueKind extends MechanismKind<TorqueEntry, Torque> {

    public TorqueKind() {
        super("torques", "torque", TorqueEntry.class, Torque.class, Torque::of);
    }

    @Override
    public void compile(Torque link, MechanismBuilder builder, int[] number) {
        builder.torque(number[link.body()], MICRO * link.moment());
    }

    @Override
    public void describe(Torque link, Description out) {
        out.put("momentNmm", link.moment(), 9);
    }
}
