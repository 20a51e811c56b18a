package jackwork.make;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.design.CaseEntry;
import jackwork.design.CoinWorksEntry;
import jackwork.design.Design;
import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whether the money comes out, and a jammed coin can be reached, without breaking glue. */
final class CaseOpens {

    /** Room for a finger beside the coins, mm: common practice, no source. */
    private static final double FINGER = 20;

    /** So far up a finger that reaches in draws a coin, mm: common practice, no source. */
    private static final double SILL = 20;

    /** What keeps the works in their place once their glue is left out: two of anything. */
    private static final int SCREWS = 2;

    private CaseOpens() {}

    /** None for a box without a case. */
    static List<Finding> ask(Design design, Subject subject) {
        CaseEntry entry = design.box().housing();
        return entry == null ? List.of() : List.of(money(design, entry, subject), jam(entry));
    }

    /** @param margin mm, below 0 the money stays in */
    private record Way(double value, double limit, double margin, Sentence why, Sentence remedy, String formula) {}

    private static Finding money(Design design, CaseEntry entry, Subject subject) {
        CaseEntry.Door door = entry.door();
        boolean works = worksComeOut(entry);
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        double needed = Math.max(FINGER, coin);
        Way worst = door == null
                ? noDoor(works, needed)
                : Stream.of(
                                opening(door, needed, coin),
                                sill(design, entry, door),
                                overCash(design, entry, door, subject, needed))
                        .min(Comparator.comparingDouble(Way::margin))
                        .orElseThrow();
        Status status = worst.margin() >= 0 ? Status.PASS : works ? Status.DOUBTFUL : Status.FAIL;
        return Finding.ask(Topic.MONEY_OUT, say("Can the money be got out without breaking glue?"))
                .answer(status, worst.value(), worst.limit(), worst.margin(), "mm")
                .at(new Where("door", null, door == null ? null : design.inBox(door.at(), "")))
                .because(worst.why(), status == Status.PASS ? Sentence.NOTHING : worst.remedy(), worst.formula());
    }

    private static Way noDoor(boolean works, double needed) {
        return new Way(
                0,
                needed,
                -needed,
                works
                        ? say("it has no door: whoever empties it takes it to pieces")
                        : say("it has no door, and glue holds everything else"),
                say("Give the case a door as high as a finger and wider than the largest coin."),
                "no door; at least a finger, " + Words.number(FINGER) + " mm (common practice, no source)");
    }

    private static Way opening(CaseEntry.Door door, double needed, double coin) {
        double opening = Math.min(door.width(), door.height());
        return new Way(
                opening,
                needed,
                opening - needed,
                say("its door is {} × {}", mm(door.width()).bare(), mm(door.height())),
                say("Make the door larger: as high as a finger and wider than the largest coin."),
                "smaller side of the door " + Words.number(opening) + " mm; at least a finger, " + Words.number(FINGER)
                        + " mm (common practice, no source), and the largest coin, " + Words.number(coin) + " mm");
    }

    /** Coins lie on the floor: a finger draws them up over the door's lower edge. */
    private static Way sill(Design design, CaseEntry entry, CaseEntry.Door door) {
        double sill = design.inBox(door.at(), "").y() - entry.floor();
        return new Way(
                sill,
                SILL,
                SILL - sill,
                say("its door begins {} above the floor that the money lies on", mm(sill)),
                say("Move the door down: its lower edge stands {} or less above the floor.", mm(SILL)),
                "lower edge of the door − floor = " + Words.number(sill) + " mm; at most " + Words.number(SILL)
                        + " mm, that a finger draws a coin up (common practice, no source)");
    }

    /** The door opens where the coins heap up. */
    private static Way overCash(Design design, CaseEntry entry, CaseEntry.Door door, Subject subject, double needed) {
        CoinWorks works = subject.assembly().coinWorks();
        CoinWorksEntry.CashRoom room = works.cashRoom();
        double from = room == null ? entry.left() : works.lip().x() - room.toLeft();
        double to = room == null ? entry.left() + entry.width() : works.lip().x() + room.toRight();
        double left = design.inBox(door.at(), "").x();
        double shared = Math.min(to, left + door.width()) - Math.max(from, left);
        return new Way(
                shared,
                needed,
                shared - needed,
                shared > 0
                        ? say("only {} of its door open on the cash room", mm(shared))
                        : say("its door stands {} beside the cash room", mm(-shared)),
                say("Move the door to where the money lies, or write the cash room as it is."),
                "width of the door on the cash room " + Words.number(shared) + " mm; at least " + Words.number(needed)
                        + " mm, a finger and the largest coin");
    }

    private static Finding jam(CaseEntry entry) {
        int held = entry.screws().size();
        // Screws let go of the works; whether those then pass out of the case takes a plan of assembly, which is not
        // computed.
        Status status = entry.screwed() ? Status.PASS : worksComeOut(entry) ? Status.OPEN : Status.FAIL;
        return Finding.ask(Topic.JAM_REACHED, say("Can a jammed coin be reached without breaking glue?"))
                .answer(
                        status,
                        (double) held,
                        status == Status.FAIL ? (double) SCREWS : null,
                        status == Status.FAIL ? (double) held - SCREWS : null,
                        "screws")
                .at(new Where("case", null, null))
                .because(
                        switch (status) {
                            case PASS -> say("nuts hold the panels: the case comes apart");
                            case OPEN ->
                                say(
                                        "{} screws hold the works; whether the works come out of the case once those are loose is"
                                                + " not computed yet",
                                        held);
                            default ->
                                held == 1
                                        ? say("one screw holds the works; it takes {} to do without the glue", SCREWS)
                                        : say("no screw holds the works: they are glued in");
                        },
                        switch (status) {
                            case PASS -> Sentence.NOTHING;
                            case OPEN ->
                                say(
                                        "Before you glue, put case and works together dry, and try whether the works come out"
                                                + " again.");
                            default ->
                                say("Hold the works with two screws or more to the near wall, or the panels with caught"
                                        + " nuts.");
                        },
                        "screws through the near wall: " + held
                                + (entry.screwed()
                                        ? "; panels held by nuts"
                                        : "; the way out of the case is not computed"));
    }

    private static boolean worksComeOut(CaseEntry entry) {
        return entry.screwed() || entry.screws().size() >= SCREWS;
    }
}
