package jackwork.check;

/** How a finding turned out, worst last. */
public enum Status {
    PASS("pass"),
    /** Nothing speaks against it, but what the question asks is not computed yet: neither a pass nor a doubt. */
    OPEN("open"),
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
