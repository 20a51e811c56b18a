package jackwork.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * The one reader of CSV files, our own tables and a maker's: RFC 4180, strictly. Fields apart by commas, records by line ends,
 * quotes around what has either, doubled inside. Each field keeps its place, which no kept library tells. Line ends may be of
 * either kind; lines with nothing in them are left out.
 */
public final class CsvReader {

    /** @param line and column of its first character, counted from 1; columns in code points */
    public record Field(String text, int line, int column) {}

    /** No CSV; the message has file, line and column. */
    public static final class Fault extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Fault(String message) {
            super(message);
        }
    }

    private static final int MOST_CHARACTERS = 16 << 20;

    private final String file;
    private final String text;
    private final List<List<Field>> records = new ArrayList<>();
    private int at;
    private int line = 1;
    private int column = 1;

    private CsvReader(String file, String text) {
        this.file = file;
        this.text = text;
    }

    /**
     * @param file its name, for what is said of it
     * @throws Fault when it is no CSV, or larger than 16 million characters
     */
    public static List<List<Field>> read(String file, String text) {
        if (text.length() > MOST_CHARACTERS) {
            throw new Fault(file + ": is larger than 16 million characters; import it in parts");
        }
        CsvReader reader = new CsvReader(file, text.startsWith("\uFEFF") ? text.substring(1) : text);
        while (reader.at < reader.text.length()) {
            reader.record();
        }
        return reader.records;
    }

    private void record() {
        List<Field> fields = new ArrayList<>();
        do {
            fields.add(field());
        } while (take(','));
        if (at < text.length() && !lineEnd()) {
            throw fault(line, column, "read \"" + text.charAt(at) + "\", expected a comma or the end of the line");
        }
        boolean blank = fields.size() == 1 && fields.get(0).text().isEmpty();
        if (!blank) {
            records.add(fields);
        }
    }

    private Field field() {
        int startLine = line;
        int startColumn = column;
        StringBuilder field = new StringBuilder();
        if (take('"')) {
            while (true) {
                if (at >= text.length()) {
                    throw fault(startLine, startColumn, "this quote is never closed");
                }
                if (take('"')) {
                    if (!take('"')) {
                        return new Field(field.toString(), startLine, startColumn);
                    }
                    field.append('"');
                } else {
                    field.append(next());
                }
            }
        }
        while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
            if (text.charAt(at) == '"') {
                throw fault(line, column, "read a quote within a field; put the whole field in quotes and double it");
            }
            field.append(next());
        }
        return new Field(field.toString(), startLine, startColumn);
    }

    private boolean lineEnd() {
        boolean carriage = take('\r');
        return take('\n') || carriage;
    }

    private boolean take(char wanted) {
        if (at < text.length() && text.charAt(at) == wanted) {
            next();
            return true;
        }
        return false;
    }

    private char next() {
        char c = text.charAt(at++);
        if (c == '\n' || (c == '\r' && (at >= text.length() || text.charAt(at) != '\n'))) {
            line++;
            column = 1;
        } else if (!Character.isLowSurrogate(c)) {
            column++;
        }
        return c;
    }

    private Fault fault(int faultLine, int faultColumn, String what) {
        return new Fault(file + ":" + faultLine + ":" + faultColumn + ": " + what);
    }
}
