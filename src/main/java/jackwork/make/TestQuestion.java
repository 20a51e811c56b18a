package jackwork.make;

import java.util.Locale;

/** What the test pieces are asked, in the order of the form, and which of the workshop's values the answer becomes. */
public enum TestQuestion {
    SHEET("The sheet", "Put a calliper on it in five places.", "the thickness of the sheet in hand"),
    KERF(
            "Kerf",
            "Cut, push the " + TestPieces.STRIPS + " strips together without a gap, measure over all of them.",
            String.format(Locale.ROOT, "kerf = (%.0f − measured) / %d", TestPieces.STRIPS_WIDE, TestPieces.STRIPS)),
    SHEET_FIT(
            "Fit of sheets",
            "Push the sheet's own edge into the notches; each is wider than the sheet was reckoned by the number on it.",
            "the first that holds without force: fits, push"),
    ROD_FIT(
            "Fit of rods",
            "Each hole is wider than the rod was reckoned by the number under it.",
            "the first in which it turns freely: fits, running; the last that grips: fits, press");

    private final String heading;
    private final String how;
    private final String becomes;

    TestQuestion(String heading, String how, String becomes) {
        this.heading = heading;
        this.how = how;
        this.becomes = becomes;
    }

    public String heading() {
        return heading;
    }

    /** What to do with the piece. */
    public String how() {
        return how;
    }

    /** What the answer is for. */
    public String becomes() {
        return becomes;
    }
}
