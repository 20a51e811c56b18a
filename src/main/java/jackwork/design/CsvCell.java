package jackwork.design;

import java.util.regex.Pattern;

/**
 * One cell of a CSV file (RFC 4180) that somebody may open as a spreadsheet. What such a program would take for a formula
 * gets an apostrophe before it, and so does what has apostrophes before something like it: taking one away again gives
 * back each text. Numbers stay as they are, those below 0 as well.
 */
public final class CsvCell {

    private static final Pattern FORMULA = Pattern.compile("(?s)'*[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20].*");
    private static final Pattern NUMBER = Pattern.compile("-\\d+(\\.\\d+)?");

    private CsvCell() {}

    /** A text as it stands in the file. */
    public static String written(String text) {
        String safe = meansAFormula(text) ? "'" + text : text;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n' || c == '\t');
        return plain ? safe : '"' + safe.replace("\"", "\"\"") + '"';
    }

    /** The text that a cell was written from, quotes taken off already. */
    public static String read(String cell) {
        return cell.startsWith("'") && meansAFormula(cell) ? cell.substring(1) : cell;
    }

    private static boolean meansAFormula(String text) {
        return FORMULA.matcher(text).matches() && !NUMBER.matcher(text).matches();
    }
}
