package jackwork.drawing;

/** What is to be done along a path, in the order in which it is done: what is cut out no longer lies still. */
public enum CutKind {
    ENGRAVE("engrave", "engrave"),
    INSIDE("inside-cuts", "inside cuts"),
    OUTSIDE("outside-cuts", "outside cuts"),
    /** Frames and register marks, for the eye alone. */
    MARK("marks", "marks, not cut");

    private final String group;
    private final String words;

    CutKind(String group, String words) {
        this.group = group;
        this.words = words;
    }

    /** Name of the group that holds these paths in a file. */
    String group() {
        return group;
    }

    /** As read by people. */
    String words() {
        return words;
    }
}
