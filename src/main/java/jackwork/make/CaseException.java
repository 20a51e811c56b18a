package jackwork.make;

import java.util.List;

/** A case that cannot be cut: one of its panels falls apart. Says which, by what, and which keys decide it. */
public final class CaseException extends MakeException {

    private static final long serialVersionUID = 1L;

    private final String panel;
    private final transient List<String> keys;
    private final String reason;

    /**
     * @param file of the box, as the design names it
     * @param keys that decide it, as the file has them: {@code case.left}
     * @param panel which falls apart
     * @param cut what is cut out of it
     */
    CaseException(String file, List<String> keys, String panel, String cut) {
        super(file + ": " + String.join(", ", keys) + ": no case can be cut, since " + reason(panel, cut) + "; "
                + "make the case larger there, move what goes through it, or use a thinner sheet for it");
        this.panel = panel;
        this.keys = List.copyOf(keys);
        this.reason = reason(panel, cut);
    }

    private static String reason(String panel, String cut) {
        return panel + " does not stay one piece of wood with " + cut;
    }

    /** The panel that falls apart. */
    String panel() {
        return panel;
    }

    /** What decides it, as the box's file has it. */
    List<String> keys() {
        return keys;
    }

    /** What goes wrong, without its place. */
    String reason() {
        return reason;
    }
}
