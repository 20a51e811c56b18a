package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The marks of the coin works stand to each other as their words say: lip, toe, heel and kicker follow one another, the lip
 * is the highest of its end, a gate's lip the end that the coin passes, and the tooth comes down on the strut.
 */
final class WorksOrdered implements Question {

    /** A mark may be drawn so far from the corner that it marks, mm: as for marks off their wood. */
    private static final double OFF = 1;
    /** Tooth and strut may be drawn touching, and so much past each other, mm. */
    private static final double LEVEL = 0.25;
    /** A lever that goes farther before its catch holds it lets the figure play without a coin, share of the stroke: a guess. */
    private static final double EARLY = 0.25;

    /** @param margin mm, below 0 is wrong */
    private record Order(String mark, Point at, double margin, Sentence why, Sentence remedy) {}

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        List<Order> orders = new ArrayList<>(way(works));
        orders.add(works.bridges() ? gateEnd(subject, works) : lipOnTop(subject, works));
        orders.add(caught(subject.assembly().lever(), works));
        // One wrong mark makes others seem wrong: the first of the list is the cause.
        Order worst = orders.stream()
                .filter(order -> order.margin() < 0)
                .findFirst()
                .orElseGet(() -> orders.stream()
                        .min(Comparator.comparingDouble(Order::margin))
                        .orElseThrow());
        boolean right = worst.margin() >= 0;
        return List.of(Finding.ask(
                        Topic.WORKS_ORDERED,
                        say("Do the marks of the coin works stand to each other as their words say?"))
                .answer(right ? Status.PASS : Status.FAIL, worst.margin(), 0.0, worst.margin(), "mm")
                .at(new Where(worst.mark(), 0.0, worst.at()))
                .because(
                        right
                                ? say(
                                        "lip, toe, heel, kicker, tooth and strut follow each other; {} has least room, {}",
                                        worst.mark(),
                                        mm(worst.margin()))
                                : worst.why(),
                        right ? Sentence.NOTHING : worst.remedy(),
                        "room of " + worst.mark() + " on its side of its neighbour = " + Words.number(worst.margin())
                                + " mm, at least 0"));
    }

    private static List<Order> way(CoinWorks works) {
        Point toHeel = works.heel().minus(works.toe());
        double floor = toHeel.length();
        Point inward = floor > 0 ? toHeel.times(1 / floor) : new Point(1, 0);
        List<Order> orders = new ArrayList<>();
        double nearer = works.lip().distance(works.heel()) - works.lip().distance(works.toe());
        orders.add(
                new Order(
                        "bucket.toe",
                        works.toe(),
                        nearer,
                        say("bucket.toe stands {} farther from the lip than bucket.heel", mm(-nearer)),
                        say(
                                "Exchange heel and toe: the toe is the floor's end at the lip's foot, the heel lies at the kicker's end.")));
        double kicker = works.kicker().minus(works.toe()).dot(inward);
        orders.add(new Order(
                "kicker",
                works.kicker(),
                kicker,
                say("the kicker waits {} beyond the lip's foot, where the coin should leave", mm(-kicker)),
                say("Set the kicker at the heel's end, so that it drives the coin toward the lip.")));
        double high = works.lip().minus(works.toe()).dot(CoinSeat.up(works));
        orders.add(new Order(
                "bucket.lip",
                works.lip(),
                high,
                say("bucket.lip lies {} below the floor", mm(-high)),
                say("Mark the lip's upper corner: what is below the floor keeps no coin.")));
        Point rise = works.rise();
        if (rise != null) {
            double above = rise.minus(works.toe()).dot(CoinSeat.up(works)) - LEVEL;
            orders.add(new Order(
                    "bucket.rise",
                    rise,
                    above,
                    say("bucket.rise stands {} above the floor line, which keeps no coin", mm(above + LEVEL)),
                    say("Exchange heel and rise: the heel is the floor's end, the rise the corner above it.")));
            double atHeel = rise.distance(works.toe()) - rise.distance(works.heel());
            orders.add(new Order(
                    "bucket.rise",
                    rise,
                    atHeel,
                    say("bucket.rise stands {} nearer to the toe than to the heel", mm(-atHeel)),
                    say("Mark the corner at the heel's end over which a coin does not roll.")));
        }
        return orders;
    }

    /** No wood of the bucket beyond the lip is higher: the coin would have to leave over that. */
    private static Order lipOnTop(Subject subject, CoinWorks works) {
        Point out = CoinSeat.along(works);
        Point up = CoinSeat.up(works);
        double reach = subject.coins().stream()
                .mapToDouble(coin -> coin.diameter())
                .max()
                .orElse(0);
        double highest = 0;
        for (Part part : subject.assembly().body(works.bucket()).parts()) {
            for (Point corner : part.drawn().outer()) {
                Point from = corner.turnedAbout(works.pivot(), works.rest()).minus(works.lip());
                boolean beyond = from.dot(out) > -OFF && from.dot(out) < reach;
                if (part.layer() == works.layer() && beyond) {
                    highest = Math.max(highest, from.dot(up));
                }
            }
        }
        return new Order(
                "bucket.lip",
                works.lip(),
                OFF - highest,
                say("beyond bucket.lip the {}'s wood stands {} higher", works.bucketWord(), mm(highest)),
                say(
                        "Mark the corner over which the coin leaves, the highest at that end, or cut the wood down to it."));
    }

    /** A gate's lip is its end at the floor: no wood of it is nearer to the toe. */
    private static Order gateEnd(Subject subject, CoinWorks works) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Part part : subject.assembly().body(works.bucket()).parts()) {
            if (part.layer() == works.layer()) {
                nearest = Math.min(
                        nearest, part.drawn().distanceToEdge(works.toe().turnedAbout(works.pivot(), -works.rest())));
            }
        }
        double past = Double.isInfinite(nearest) ? 0 : works.lip().distance(works.toe()) - nearest;
        return new Order(
                "bucket.lip",
                works.lip(),
                OFF - past,
                say("the gate's wood comes {} nearer to the floor's end than bucket.lip", mm(past)),
                say("Mark the gate's end as bucket.lip: there the coin passes."));
    }

    /** Strut beneath tooth, and not far beneath. */
    private static Order caught(Lever lever, CoinWorks works) {
        Point tooth = works.tooth().minus(lever.pivot());
        Point strut = works.strut().minus(lever.pivot());
        double meets = Math.atan2(tooth.cross(strut), tooth.dot(strut)) / lever.turn();
        double most = works.bridges() ? 1 : EARLY;
        double way = Math.abs(lever.turn()) * tooth.length();
        boolean early = meets < most / 2;
        return new Order(
                "catch.tooth",
                works.tooth(),
                (early ? meets : most - meets) * way + (early ? LEVEL : 0),
                early
                        ? say("catch.tooth lies {} past catch.strut: pressed, it moves away from it", mm(-meets * way))
                        : say(
                                "catch.tooth meets catch.strut only at {}: until then the figure plays without a"
                                        + " coin",
                                Measure.stroke(meets)),
                early
                        ? say("Exchange tooth and strut, or mark them so that the tooth comes down on the strut.")
                        : say("Bring the strut's end up to the tooth."));
    }
}
