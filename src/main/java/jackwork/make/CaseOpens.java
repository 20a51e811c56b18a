package jackwork.make;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Subject;
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
        String why;
        if (door == null) {
            why = works
                    ? "it has no door: whoever empties it takes it to pieces"
                    : "it has no door, and glue holds everything else";
        } else {
            why = "its door is " + Words.number(door.width()) + " × " + Words.number(door.height()) + " mm";
        }
        return new Finding(
                "money-out",
                "Can the money be got out without breaking glue?",
                status,
                opening,
                needed,
                margin,
                "mm",
                new Where("door", null, null),
                why,
                status == Status.PASS
                        ? ""
                        : "Give the case a door as high as a finger and wider than the largest coin.",
                "smaller side of the door " + Words.number(opening) + " mm; at least a finger, " + Words.number(FINGER)
                        + " mm (common practice, no source), and the largest coin, " + Words.number(coin) + " mm",
                List.of());
    }

    private static Finding jam(CaseEntry entry) {
        int held = entry.screws().size();
        Status status = worksComeOut(entry) ? Status.PASS : Status.FAIL;
        String why;
        if (entry.screwed()) {
            why = "nuts hold the panels: the case comes apart";
        } else if (status == Status.PASS) {
            why = held + " screws hold the works, they come out by those";
        } else {
            why = "the works are glued in";
        }
        return new Finding(
                "jam-reached",
                "Can a jammed coin be reached without breaking glue?",
                status,
                (double) held,
                entry.screwed() ? null : (double) SCREWS,
                entry.screwed() ? null : (double) held - SCREWS,
                "screws",
                new Where("case", null, null),
                why,
                status == Status.PASS
                        ? ""
                        : "Hold the works with two screws or more to the near wall, or the panels with caught nuts.",
                "screws through the near wall: " + held + (entry.screwed() ? "; panels held by nuts" : ""),
                List.of());
    }

    private static boolean worksComeOut(CaseEntry entry) {
        return entry.screwed() || entry.screws().size() >= SCREWS;
    }
}
