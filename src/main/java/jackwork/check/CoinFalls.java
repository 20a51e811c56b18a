package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Beneath its slot a coin falls into free room: no wood in its layer stands under the opening but what slopes and leads it
 * inward, and between that the largest coin goes through.
 */
final class CoinFalls implements Question {

    /** A coin slips off an edge that stands so far under its slot, mm: common practice, no source. */
    private static final double UNDER = 2;
    /** How far below the slot wood is looked for, in shares of its length. */
    private static final double BELOW = 0.5;

    /** What reaches under the opening from one end, mm; deep where it slopes, flat where it would catch the coin. */
    private record Under(Part part, boolean left, double flat, double deep) {}

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        Point slot = works.slotAt();
        double half = works.slotLength() / 2;
        Outline room =
                Outline.rectangle(slot.x() - half, slot.y() - BELOW * works.slotLength(), slot.x() + half, slot.y());
        List<Under> under = new ArrayList<>();
        for (Part part : assembly.parts()) {
            int body = assembly.bodyOf(part.name());
            boolean stands = body != works.bucket() && body != assembly.lever().body();
            if (stands && part.layer() == works.layer()) {
                part.drawn().shared(room).forEach(piece -> under.add(under(part, piece, slot, half)));
            }
        }
        double left = under.stream().filter(Under::left).mapToDouble(Under::deep).max().orElse(0);
        double right = under.stream()
                .filter(one -> !one.left())
                .mapToDouble(Under::deep)
                .max()
                .orElse(0);
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        double free = works.slotLength() - left - right;
        Under flat = under.stream().max(Comparator.comparingDouble(Under::flat)).orElse(null);
        double most = flat == null ? 0 : flat.flat();
        // A slot that takes no coin at all has a finding of its own.
        boolean narrow = left + right > 0 && free - coin < UNDER - most && works.slotLength() > coin;
        return List.of(finding(works, flat, narrow, narrow ? free : most, narrow ? coin : UNDER));
    }

    private static Under under(Part part, Outline piece, Point slot, double half) {
        Bounds bounds = piece.bounds();
        double fromLeft = bounds.maxX() - (slot.x() - half);
        double fromRight = slot.x() + half - bounds.minX();
        boolean left = fromLeft <= fromRight;
        double flat = 0;
        for (Point corner : piece.outer()) {
            double reaches = left ? corner.x() - slot.x() + half : slot.x() + half - corner.x();
            // On a slope of 45° or steeper a coin slides on.
            flat = Math.max(flat, reaches - (bounds.maxY() - corner.y()));
        }
        return new Under(part, left, flat, left ? fromLeft : fromRight);
    }

    private static Finding finding(
            CoinWorks works, @org.jspecify.annotations.Nullable Under under, boolean narrow, double value, double limit) {
        double margin = narrow ? value - limit : limit - value;
        boolean falls = margin >= 0;
        String part = under == null ? "" : under.part().name();
        return new Finding(
                Topic.COIN_FALLS,
                "",
                say("Does the coin fall into free room beneath its slot?"),
                falls ? Status.PASS : Status.FAIL,
                value,
                limit,
                margin,
                "mm",
                new Where("slot", null, works.slotAt()),
                under == null
                        ? say("no wood in its layer stands under the slot")
                        : narrow
                                ? say("the wood under the slot leaves {} where the largest coin is {} wide", mm(value), mm(limit))
                                : say(
                                        "{} stands {} under the {} end of the slot",
                                        part,
                                        mm(value),
                                        under.left() ? "left" : "right"),
                falls ? Sentence.NOTHING : say("Move slot.at over the gap in which the coin falls, or set {} aside.", part),
                (narrow ? "room between the wood = " : "wood under the slot, slopes of 45° and steeper taken off = ")
                        + Words.number(value) + " mm; " + (narrow ? "at least " : "at most ") + Words.number(limit)
                        + " mm" + (narrow ? "" : " (common practice, no source)"));
    }
}
