package jackwork.motion.kind;

import jackwork.design.StringEntry;
import jackwork.motion.model.Cord;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Description;
import jackwork.parts.StringRun;
import java.util.Iterator;

/** A string over posts and through eyelets: {@link Cord}. */
public final class StringKind extends MechanismKind<StringEntry, StringRun> {

    public StringKind() {
        super("strings", "string", StringEntry.class, StringRun.class, StringRun::of);
    }

    @Override
    public void compile(StringRun link, MechanismBuilder builder, int[] number) {
        builder.cord(
                link.name(),
                number[link.a()],
                link.from(),
                link.over().stream()
                        .map(guide -> new MechanismBuilder.CordGuide(
                                number[guide.body()],
                                guide.at(),
                                guide.radius(),
                                guide.side(),
                                guide.wholeTurns(),
                                guide.friction().coefficient().value()))
                        .toList(),
                number[link.b()],
                link.to(),
                link.slack());
    }

    @Override
    public void describe(StringRun link, Description out) {
        Iterator<Double> wraps = link.path().wraps().iterator();
        out.put("from", link.from());
        out.put("to", link.to());
        out.put("slack", link.slack(), 6);
        out.putList("over", link.over(), (guide, over) -> {
            over.putBody("body", guide.body());
            over.put("at", guide.at());
            over.put("radius", guide.radius(), 6);
            over.put("turns", guide.radius() == 0 ? "eyelet" : guide.side() > 0 ? "left" : "right");
            over.put("wholeTurns", guide.wholeTurns());
            over.put("wrapDeg", Math.toDegrees(wraps.next()), 6);
            over.put("friction", guide.friction().coefficient().value(), 6);
        });
    }
}
