package jackwork.bench;

/**
 * @param operation in the maker's words: {@code glue}
 * @param minutes for all the pieces together
 * @param pieces done at once
 */
public record Timing(Stamp stamp, RevisionName revision, String operation, double minutes, int pieces)
        implements Stamped {

    /** Half a year of working days. */
    private static final int MOST_MINUTES = 100_000;

    public Timing {
        Texts.require("operation", operation, 1, 80);
        Texts.require("pieces", pieces, 1, 100_000);
        if (!(minutes > 0 && minutes <= MOST_MINUTES)) {
            throw new IllegalArgumentException(
                    "minutes reads " + minutes + ", expected more than 0 and at most " + MOST_MINUTES);
        }
    }
}
