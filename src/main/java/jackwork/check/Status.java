package jackwork.check;

/** How a finding turned out, worst last. */
public enum Status {
    PASS("pass"),
    /** The design as numbered passes; within the spread of what it rests on, it may not. */
    DOUBTFUL("doubtful"),
    FAIL("fail");

    private final String word;

    Status(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
