package jackwork.motion.kind;

import jackwork.design.TorqueEntry;
import jackwork.motion.model.Loads;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.Joining;
import jackwork.parts.Torque;

/** A steady torque: {@link Loads}. */
public final class TorqueKind implements MechanismKind<TorqueEntry, Torque> {

    @Override
    public String section() {
        return "torques";
    }

    @Override
    public String label() {
        return "torque";
    }

    @Override
    public Class<TorqueEntry> entry() {
        return TorqueEntry.class;
    }

    @Override
    public Class<Torque> link() {
        return Torque.class;
    }

    @Override
    public Torque make(String name, TorqueEntry entry, Joining around) {
        return Torque.of(name, entry, around);
    }

    @Override
    public void compile(Torque link, MechanismBuilder builder, int[] number) {
        builder.torque(number[link.body()], MICRO * link.moment());
    }

    @Override
    public void describe(Torque link, Description out) {
        out.put("kind", "torque");
        out.put("momentNmm", link.moment(), 9);
    }
}
