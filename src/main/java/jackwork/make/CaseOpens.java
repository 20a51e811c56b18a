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
import jackwork.design.Design;
import jackwork.stock.Coin;
import java.util.List;

/** Whether the money comes out, and a jammed coin can be reached, without breaking glue. */
final class CaseOpens {

    /** Room for a finger beside the coins, mm: common practice, no source. */
    private static final double FINGER = 20;

    /** What keeps the works in their place once their glue is left out: two of anything. */
    private static final int SCREWS = 2;

    private CaseOpens() {}

    /** None for a box without a case. */
    static List<Finding> ask(Design design, Subject subject) {
        CaseEntry entry = design.box().housing();
        return entry == null ? List.of() : List.of(money(entry, subject), jam(entry));
    }

    private static Finding money(CaseEntry entry, Subject subject) {
        CaseEntry.Door door = entry.door();
        boolean works = worksComeOut(entry);
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        double needed = Math.max(FINGER, coin);
        double opening = door == null ? 0 : Math.min(door.width(), door.height());
        double margin = opening - needed;
        Status status = margin >= 0 ? Status.PASS : works ? Status.DOUBTFUL : Status.FAIL;
        Sentence why;
        if (door == null) {
            why = works
                    ? say("it has no door: whoever empties it takes it to pieces")
                    : say("it has no door, and glue holds everything else");
        } else {
            why = say("its door is {} × {}", mm(door.width()).bare(), mm(door.height()));
        }
        return new Finding(
                Topic.MONEY_OUT,
                "",
                say("Can the money be got out without breaking glue?"),
                status,
                opening,
                needed,
                margin,
                "mm",
                new Where("door", null, null),
                why,
                status == Status.PASS
                        ? Sentence.NOTHING
                        : say(
                                "{} as high as a finger and wider than the largest coin.",
                                door == null ? "Give the case a door" : "Make the door larger:"),
                "smaller side of the door " + Words.number(opening) + " mm; at least a finger, " + Words.number(FINGER)
                        + " mm (common practice, no source), and the largest coin, " + Words.number(coin) + " mm");
    }

    private static Finding jam(CaseEntry entry) {
        int held = entry.screws().size();
        // Screws let go of the works; whether those then pass out of the case takes a plan of assembly, which is not
        // computed.
        Status status = entry.screwed() ? Status.PASS : worksComeOut(entry) ? Status.OPEN : Status.FAIL;
        return new Finding(
                Topic.JAM_REACHED,
                "",
                say("Can a jammed coin be reached without breaking glue?"),
                status,
                (double) held,
                status == Status.FAIL ? (double) SCREWS : null,
                status == Status.FAIL ? (double) held - SCREWS : null,
                "screws",
                new Where("case", null, null),
                switch (status) {
                    case PASS -> say("nuts hold the panels: the case comes apart");
                    case OPEN ->
                        say(
                                "{} screws hold the works; whether the works come out of the case once those are loose is"
                                        + " not computed yet",
                                held);
                    default -> say("the works are glued in");
                },
                switch (status) {
                    case PASS -> Sentence.NOTHING;
                    case OPEN ->
                        say("Before you glue, put case and works together dry, and try whether the works come out"
                                + " again.");
                    default ->
                        say("Hold the works with two screws or more to the near wall, or the panels with caught"
                                + " nuts.");
                },
                "screws through the near wall: " + held
                        + (entry.screwed() ? "; panels held by nuts" : "; the way out of the case is not computed"));
    }

    private static boolean worksComeOut(CaseEntry entry) {
        return entry.screwed() || entry.screws().size() >= SCREWS;
    }
}
