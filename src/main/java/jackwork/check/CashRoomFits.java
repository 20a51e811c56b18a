package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.design.CoinWorksEntry;
import jackwork.geometry.Point;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.Comparator;
import java.util.List;

/** The room where coins heap up lies inside the case, where one is given, and takes a coin. */
final class CashRoomFits implements Question {

    /** A room without a case around it: what a person carries has no longer side, mm. */
    private static final double LARGEST = 500;
    /** Half of what is read to a tenth, mm. */
    private static final double ROUNDING = 0.05;

    /** One side of the room against what it may be. */
    private record Side(String name, double size, double least, double most) {

        double margin() {
            return Math.min(size - least, most - size);
        }
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        CoinWorksEntry.CashRoom room = works.cashRoom();
        if (room == null) {
            return List.of();
        }
        CaseEntry housing = subject.design().box().housing();
        Point lip = works.lip();
        double left = housing == null ? LARGEST : lip.x() - housing.left();
        double right = housing == null ? LARGEST : housing.left() + housing.width() - lip.x();
        double below = housing == null ? LARGEST : lip.y() - housing.floor();
        double depth = housing == null ? LARGEST : housing.depth();
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        Side worst = List.of(
                        new Side("to-left", room.toLeft(), 0, left),
                        new Side("to-right", room.toRight(), 0, right),
                        new Side("depth", room.depth(), coin, depth),
                        new Side("below", room.below(), coin, below),
                        new Side("to-left and to-right together", room.toLeft() + room.toRight(), coin, left + right))
                .stream()
                .min(Comparator.comparingDouble(Side::margin))
                .orElseThrow();
        return List.of(finding(worst, lip, housing != null));
    }

    private static Finding finding(Side side, Point lip, boolean cased) {
        boolean fits = side.margin() >= -ROUNDING;
        boolean small = side.size() - side.least() < side.most() - side.size();
        double limit = small ? side.least() : side.most();
        Sentence bound = say("{} {}", small ? "at least" : "at most", mm(limit));
        return Finding.ask(
                        Topic.CASH_ROOM_FITS,
                        cased ? say("Does the cash room lie inside the case?") : say("Can the cash room be made?"))
                .answer(fits ? Status.PASS : Status.FAIL, side.size(), limit, side.margin(), "mm")
                .at(new Where("cash room", null, lip))
                .because(
                        say(
                                "cash-room {} is {}, {} {}",
                                side.name(),
                                mm(side.size()),
                                bound,
                                (fits ? "fit" : "would fit")),
                        fits
                                ? Sentence.NOTHING
                                : small
                                        ? say(
                                                "Write the room's sides as lengths from beneath the lip; each takes the largest coin.")
                                        : cased
                                                ? say(
                                                        "Write the room as it is inside the case, measured from beneath the lip, or make the case larger.")
                                                : say("Write the room as it is, measured from beneath the lip."),
                        side.name() + " = " + Words.number(side.size()) + " mm; " + bound + " "
                                + (cased && !small
                                        ? "inside the case, measured from the lip"
                                        : "of any box that is carried"));
    }
}
