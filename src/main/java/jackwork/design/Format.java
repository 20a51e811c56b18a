package jackwork.design;

import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * The number that says by which meaning of its words a file was written. All files of a workshop have the same: a maker sees
 * one thing, and what changes in one file often changes what another means.
 */
public final class Format {

    /** The one that is read and written. */
    public static final int NOW = 2;

    private static final String KEY = "format";

    private Format() {}

    /** What a file says of itself. */
    enum Age {
        EARLIER,
        NOW,
        NEWER,
        /** Nothing, or nothing that any format was called. */
        UNKNOWN
    }

    static Age of(YamlFile file) {
        String said = said(file).replaceFirst("^[+]", "");
        if (!said.matches("0*[1-9]\\d*")) {
            return Age.UNKNOWN;
        }
        String digits = said.replaceFirst("^0+", "");
        // Of any length.
        int sign = digits.length() == 1 ? Integer.compare(Integer.parseInt(digits), NOW) : 1;
        return sign < 0 ? Age.EARLIER : sign > 0 ? Age.NEWER : Age.NOW;
    }

    /**
     * Before anything else of a file is read: what its words meant in another format is nothing to complain of key by key.
     *
     * @throws DesignException when it is of another format
     */
    static void requireNow(YamlFile file) {
        switch (of(file)) {
            case EARLIER ->
                throw file.refused(
                        place(file),
                        "read format " + said(file) + ", and this Jackwork reads format " + NOW
                                + "; one step makes it of the workshop's files, shows first what it changes, and can be"
                                + " taken back: jackwork renew FOLDER, or the button on the page");
            case NEWER ->
                throw file.refused(
                        place(file),
                        "read format " + said(file) + ", this Jackwork reads format " + NOW
                                + "; use a newer Jackwork. Nothing was changed");
            case NOW, UNKNOWN -> {
                // What is no format at all is told with all the rest.
            }
        }
    }

    /** Of a file that says no format that any was called. */
    static DesignException unknown(YamlFile file) {
        String said = said(file);
        return file.refused(
                place(file),
                (said.isEmpty() ? "says no format" : "read format " + said) + ", expected " + NOW
                        + ", or an earlier number");
    }

    /** Of a file that was read. */
    static void check(int format, YamlFile file) {
        if (format != NOW) {
            file.problem(KEY, "read format " + format + ", expected " + NOW);
        }
    }

    /** As it is written; empty when nothing is. */
    private static String said(YamlFile file) {
        return value(file) instanceof ScalarNode scalar ? scalar.getValue().strip() : "";
    }

    private static Node place(YamlFile file) {
        Node value = value(file);
        return value == null ? file.root() : value;
    }

    private static @Nullable Node value(YamlFile file) {
        return YamlText.child(file.root(), KEY);
    }
}
