package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import java.util.List;

/**
 * The coin is led beneath its slot by wood in its own layer on either side, and what kicks it out is thinner than the gap in
 * which both are.
 */
final class CoinLed implements Question {

    /** A coin led by walls farther from the slot's ends goes where it likes, mm: common practice, no source. */
    private static final double BESIDE = 8;
    /** So much thinner than its gap a kicker goes through it freely, mm: common practice, no source. */
    private static final double FREE = 0.2;
    /** How far below its slot the walls are looked for, in shares of its length. */
    private static final double[] BELOW = {0.1, 0.25, 0.5};

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        double left = wall(assembly, works, -1);
        double right = wall(assembly, works, 1);
        double far = Math.max(left, right);
        double gap = assembly.coinGap();
        double kicker = assembly.body(assembly.lever().body()).parts().stream()
                .filter(part -> part.layer() == works.layer())
                .mapToDouble(part -> part.thickness().value())
                .max()
                .orElse(0);
        return List.of(walls(works, far, left > right), kicker(works, gap, kicker));
    }

    /** From the slot's end to the nearest wall on that side, mm. */
    private static double wall(Assembly assembly, CoinWorks works, int side) {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : assembly.parts()) {
            boolean leads = part.ofBox()
                    && part.layer() == works.layer()
                    && assembly.bodyOf(part.name()) != works.bucket()
                    && assembly.bodyOf(part.name()) != assembly.lever().body();
            for (double below : BELOW) {
                Point end = works.slotAt().plus(new Point(side * works.slotLength() / 2, -below * works.slotLength()));
                if (leads) {
                    least = Math.min(
                            least, part.drawn().contains(end) ? 0 : part.drawn().distanceToEdge(end));
                }
            }
        }
        return least;
    }

    private static Finding walls(CoinWorks works, double far, boolean left) {
        boolean led = far <= BESIDE;
        String side = left ? "left" : "right";
        return Finding.ask(Topic.COIN_LED, say("Is the coin led on both sides beneath its slot?"))
                .answer(led ? Status.PASS : Status.FAIL, far, BESIDE, BESIDE - far, "mm")
                .at(new Where("slot", null, works.slotAt()))
                .because(
                        Double.isInfinite(far)
                                ? say("no part in the coin's layer leads it")
                                : say(
                                        "at the {} the wood in the coin's layer begins {} from the slot's end",
                                        side,
                                        mm(far)),
                        led ? Sentence.NOTHING : say("Set the parts that lead the coin in its layer, beside the slot."),
                        "from the slot's ends to wood in the coin's layer, at most " + Words.number(BESIDE)
                                + " mm (common practice, no source)");
    }

    private static Finding kicker(CoinWorks works, double gap, double kicker) {
        double free = gap - kicker;
        boolean goes = free >= FREE;
        return Finding.ask(Topic.KICKER_IN_GAP, say("Does the kicker go through the coin's gap freely?"))
                .answer(goes ? Status.PASS : Status.FAIL, free, FREE, free - FREE, "mm")
                .at(new Where("kicker", 0.0, works.kicker()))
                .because(
                        say("it leaves {} of the gap that it works in", mm(free)),
                        goes ? Sentence.NOTHING : say("Cut the kicker from a thinner sheet, or make the gap wider."),
                        "gap " + Words.number(gap) + " − kicker " + Words.number(kicker) + " = " + Words.number(free)
                                + " mm; at least " + Words.number(FREE) + " mm (common practice, no source)");
    }
}
