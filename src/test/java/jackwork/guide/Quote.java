package jackwork.guide;

import java.util.List;

/**
 * Lines that a page quotes, beside what is there.
 *
 * @param page its file
 * @param of the command, or the file
 * @param quoted where {@code ...} stands, lines are left out
 * @param found all of them
 */
record Quote(String page, String of, List<String> quoted, List<String> found) {

    private static final String LEFT_OUT = "...";

    /** The first quoted line that is not there, or not in that place; empty when all are. */
    String missing() {
        int at = 0;
        boolean anywhere = true; // a quote may begin further down
        for (String line : quoted) {
            if (line.strip().equals(LEFT_OUT)) {
                anywhere = true;
                continue;
            }
            int here = at;
            while (here < found.size() && !alike(found.get(here), line)) {
                here++;
            }
            if (here == found.size() || !anywhere && here != at) {
                return line.isBlank() ? "an empty line after: " + (at == 0 ? "" : found.get(at - 1)) : line;
            }
            at = here + 1;
            anywhere = false;
        }
        return "";
    }

    /** How far a line is indented does not matter: code is quoted further left than it stands. */
    private static boolean alike(String one, String other) {
        return one.strip().equals(other.strip());
    }

    boolean isTrue() {
        return missing().isEmpty();
    }

    @Override
    public String toString() {
        return page + " quotes " + of + ", where this is not, or not in this place: " + missing();
    }
}
