package jackwork.motion.kind;

import jackwork.design.SpringEntry;
import jackwork.motion.model.CoilSpring;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.SpringLink;

/** A spring or band: {@link CoilSpring}. */
public final class SpringKind extends MechanismKind<SpringEntry, SpringLink> {

    public SpringKind() {
        super("springs", "spring", SpringEntry.class, SpringLink.class, SpringLink::of);
    }

    @Override
    public void compile(SpringLink link, MechanismBuilder builder, int[] number) {
        builder.spring(
                link.name(),
                number[link.a()],
                link.onA(),
                number[link.b()],
                link.onB(),
                MICRO * link.stiffness(),
                link.free(),
                link.pullsOnly());
    }

    @Override
    public void describe(SpringLink link, Description out) {
        out.put("from", link.onA());
        out.put("to", link.onB());
        out.put("stiffnessNPerMm", link.stiffness(), 9);
        out.put("free", link.free(), 6);
        out.put("pullsOnly", link.pullsOnly());
    }
}
