package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CoinWorksEntry;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The points that lever and coin works are computed from lie on the wood that they speak of: where the coin is concerned, in
 * the coin's own layer; tooth and strut in one that both have.
 */
final class WorksMarked implements Question {

    /** A mark may be drawn so far off the edge that it marks, mm. */
    private static final double OFF = 1;

    /** @param of what it must lie on, for people */
    private record Mark(String name, Point at, String of, double off) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        CoinWorksEntry.Bridge bridge = subject.design().box().coinWorks().bridge();
        int lever = assembly.lever().body();
        int bucket = works.bucket();
        // Where the coin bridges a gap it lies on what does not move.
        int floor = bridge == null ? bucket : 0;
        List<Mark> marks = new ArrayList<>();
        marks.add(mark(assembly, "lever.press", assembly.lever().press(), "the lever", lever));
        int coin = works.layer();
        String lies = "what the coin lies on in its layer";
        marks.add(caught(assembly, lever, bucket));
        marks.add(mark(assembly, "kicker", works.kicker(), "the lever in the coin's layer", lever, coin));
        marks.add(mark(assembly, "bucket.lip", works.lip(), "the " + works.bucketWord(), bucket, coin));
        marks.add(mark(assembly, "bucket.heel", works.heel(), lies, floor, coin));
        marks.add(mark(assembly, "bucket.toe", works.toe(), lies, floor, coin));
        Point rise = works.rise();
        if (rise != null) {
            marks.add(mark(assembly, "bucket.rise", rise, lies, floor, coin));
        }
        Point face = works.face();
        if (face != null) {
            marks.add(mark(assembly, "bridge.face", face, "the gate in the coin's layer", bucket, coin));
        }
        return List.of(finding(
                marks.stream().max(Comparator.comparingDouble(Mark::off)).orElseThrow()));
    }

    private static Mark mark(Assembly assembly, String name, Point at, String of, int body) {
        double off = Double.POSITIVE_INFINITY;
        for (Part part : assembly.body(body).parts()) {
            off = Math.min(off, off(part, assembly.drawn(body, at)));
        }
        return new Mark(name, at, of, off);
    }

    private static Mark mark(Assembly assembly, String name, Point at, String of, int body, int layer) {
        return new Mark(name, at, of, off(assembly, body, layer, at));
    }

    /** Tooth or strut, whichever is farther off in the layer where both are nearest to their wood. */
    private static Mark caught(Assembly assembly, int lever, int bucket) {
        CoinWorks works = assembly.coinWorks();
        Mark least = new Mark("catch.tooth", works.tooth(), "any layer of the lever", Double.POSITIVE_INFINITY);
        for (Part part : assembly.body(lever).parts()) {
            double tooth = off(assembly, lever, part.layer(), works.tooth());
            double strut = off(assembly, bucket, part.layer(), works.strut());
            if (Math.max(tooth, strut) < least.off()) {
                least = tooth > strut
                        ? new Mark("catch.tooth", works.tooth(), "the lever in the strut's layer", tooth)
                        : new Mark(
                                "catch.strut",
                                works.strut(),
                                "the " + works.bucketWord() + " in the tooth's layer",
                                strut);
            }
        }
        return least;
    }

    private static double off(Assembly assembly, int body, int layer, Point at) {
        double off = Double.POSITIVE_INFINITY;
        for (Part part : assembly.body(body).parts()) {
            off = part.layer() == layer ? Math.min(off, off(part, assembly.drawn(body, at))) : off;
        }
        return off;
    }

    private static double off(Part part, Point at) {
        return part.drawn().contains(at) ? 0 : part.drawn().distanceToEdge(at);
    }

    private static Finding finding(Mark mark) {
        boolean lies = mark.off() <= OFF;
        return Finding.ask(Topic.WORKS_MARKED, say("Do the points of lever and coin works lie on their wood?"))
                .answer(lies ? Status.PASS : Status.FAIL, mark.off(), OFF, OFF - mark.off(), "mm")
                .at(new Where(mark.name(), 0.0, mark.at()))
                .because(
                        lies
                                ? say("{} is farthest from {}, {}", mark.name(), mark.of(), mm(mark.off()))
                                : Double.isInfinite(mark.off())
                                        ? say("{} has no wood: {} is not there", mark.name(), mark.of())
                                        : say(
                                                "{} stands {} off {}: there is no wood to do what is computed",
                                                mark.name(),
                                                mm(mark.off()),
                                                mark.of()),
                        lies
                                ? Sentence.NOTHING
                                : say(
                                        "Move {} onto the edge of {}, or draw the wood up to it.",
                                        mark.name(),
                                        mark.of()),
                        "distance of " + mark.name() + " from the wood of " + mark.of() + " = "
                                + Words.number(mark.off()) + " mm, at most " + Words.number(OFF) + " mm");
    }
}
