package jackwork.motion.kind;

import jackwork.design.PawlEntry;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Touch;
import jackwork.parts.Description;
import jackwork.parts.RatchetPair;

/** A pawl on a ratchet wheel: {@link Touch}. */
public final class PawlKind extends MechanismKind<PawlEntry, RatchetPair> {

    public PawlKind() {
        super("pawls", "pawl", PawlEntry.class, RatchetPair.class, RatchetPair::of);
    }

    @Override
    public void compile(RatchetPair link, MechanismBuilder builder, int[] number) {
        builder.touchDisc(
                link.name(),
                number[link.pawl()],
                link.tip(),
                link.radius(),
                number[link.wheel()],
                link.teeth(),
                link.friction().coefficient().value(),
                WOOD_ON_WOOD);
    }

    @Override
    public void describe(RatchetPair link, Description out) {
        out.put("tip", link.tip());
        out.put("radius", link.radius(), 6);
        out.put("wheel", link.teeth());
    }
}
