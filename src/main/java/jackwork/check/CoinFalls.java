package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Bounds;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import jackwork.parts.RodRun;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Beneath its slot a coin falls into free room: no wood in its layer stands under the opening but what slopes and leads it
 * inward, and between that the largest coin goes through.
 */
final class CoinFalls implements Question {

    /** A coin slips off an edge that stands so far under its slot, mm: common practice, no source. */
    private static final double UNDER = 2;
    /** Flattening of a rod's round, mm. */
    private static final double FLAT = 0.01;
    /** How far below the slot wood is looked for, in shares of its length. */
    private static final double BELOW = 0.5;

    /** What reaches under the opening from one end, mm; deep where it slopes, flat where it would catch the coin. */
    private record Under(String name, boolean left, double flat, double deep) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        Point slot = works.slotAt();
        double half = works.slotLength() / 2;
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        // Walls may stand beside the slot and still leave the coin no room between them.
        double wide = half + coin;
        Outline room =
                Outline.rectangle(slot.x() - wide, slot.y() - BELOW * works.slotLength(), slot.x() + wide, slot.y());
        List<Under> under = new ArrayList<>();
        for (Part part : assembly.parts()) {
            int body = assembly.bodyOf(part.name());
            boolean stands = body != works.bucket() && body != assembly.lever().body();
            if (stands && part.layer() == works.layer()) {
                part.drawn().shared(room).forEach(piece -> under.add(under(part.name(), piece, slot, half)));
            }
        }
        for (RodRun rod : subject.rods()) {
            if (rod.from() <= works.layer() && works.layer() <= rod.to() && stands(assembly, rod)) {
                Outline.disc(new Circle(rod.at(), rod.radius()), FLAT)
                        .shared(room)
                        .forEach(piece -> under.add(under(rod.words(), piece, slot, half)));
            }
        }
        double free = works.slotLength() - deepest(under, true, coin) - deepest(under, false, coin);
        Under flat = under.stream().max(Comparator.comparingDouble(Under::flat)).orElse(null);
        double most = flat == null ? 0 : Math.max(0, flat.flat());
        // A slot that takes no coin at all has a finding of its own.
        boolean narrow = flat != null && free - coin < UNDER - most;
        return List.of(finding(works, flat, narrow, narrow ? free : most, narrow ? coin : UNDER));
    }

    /** Whether it is held by what neither lever nor bucket carries. */
    private static boolean stands(Assembly assembly, RodRun rod) {
        return rod.parts().stream()
                .mapToInt(assembly::bodyOf)
                .noneMatch(body -> body == assembly.lever().body()
                        || body == assembly.coinWorks().bucket());
    }

    /** How far the wood at one end reaches under the slot, mm; negative where it stands beside it. */
    private static double deepest(List<Under> under, boolean left, double none) {
        return under.stream()
                .filter(one -> one.left() == left)
                .mapToDouble(Under::deep)
                .max()
                .orElse(-none);
    }

    private static Under under(String name, Outline piece, Point slot, double half) {
        Bounds bounds = piece.bounds();
        double fromLeft = bounds.maxX() - (slot.x() - half);
        double fromRight = slot.x() + half - bounds.minX();
        boolean left = bounds.centre().x() <= slot.x();
        double flat = Double.NEGATIVE_INFINITY;
        for (Point corner : piece.outer()) {
            double reaches = left ? corner.x() - slot.x() + half : slot.x() + half - corner.x();
            // On a slope of 45° or steeper a coin slides on.
            flat = Math.max(flat, reaches - (bounds.maxY() - corner.y()));
        }
        return new Under(name, left, flat, left ? fromLeft : fromRight);
    }

    private static Finding finding(CoinWorks works, @Nullable Under under, boolean narrow, double value, double limit) {
        double margin = narrow ? value - limit : limit - value;
        boolean falls = margin >= 0;
        String part = under == null ? "" : under.name();
        return Finding.ask(Topic.COIN_FALLS, say("Does the coin fall into free room beneath its slot?"))
                .answer(falls ? Status.PASS : Status.FAIL, value, limit, margin, "mm")
                .at(new Where("slot", null, works.slotAt()))
                .because(
                        under == null || (!narrow && value == 0)
                                ? say("no wood in its layer stands under the slot")
                                : narrow
                                        ? say(
                                                "the wood on either side leaves {} where the largest coin is {} wide",
                                                mm(value),
                                                mm(limit))
                                        : say(
                                                "{} stands {} under the {} end of the slot",
                                                part,
                                                mm(value),
                                                under.left() ? "left" : "right"),
                        falls
                                ? Sentence.NOTHING
                                : say(
                                        "Move slot.at over the gap in which the coin falls, or set the wood beside it aside."),
                        (narrow
                                        ? "room between the wood = "
                                        : "wood under the slot, slopes of 45° and steeper taken off = ")
                                + Words.number(value) + " mm; " + (narrow ? "at least " : "at most ")
                                + Words.number(limit)
                                + " mm" + (narrow ? "" : " (common practice, no source)"));
    }
}
