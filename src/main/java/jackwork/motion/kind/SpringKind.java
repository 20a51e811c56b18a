package jackwork.motion.kind;

import jackwork.design.SpringEntry;
import jackwork.motion.model.CoilSpring;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.Joining;
import jackwork.parts.SpringLink;

/** A spring or band: {@link CoilSpring}. */
public final class SpringKind implements MechanismKind<SpringEntry, SpringLink> {

    @Override
    public String section() {
        return "springs";
    }

    @Override
    public String label() {
        return "spring";
    }

    @Override
    public Class<SpringEntry> entry() {
        return SpringEntry.class;
    }

    @Override
    public Class<SpringLink> link() {
        return SpringLink.class;
    }

    @Override
    public SpringLink make(String name, SpringEntry entry, Joining around) {
        return SpringLink.of(name, entry, around);
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
        out.put("kind", "spring");
        out.put("from", link.onA());
        out.put("to", link.onB());
        out.put("stiffnessNPerMm", link.stiffness(), 9);
        out.put("free", link.free(), 6);
        out.put("pullsOnly", link.pullsOnly());
    }
}
