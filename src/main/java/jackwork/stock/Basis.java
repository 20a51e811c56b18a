package jackwork.stock;

/** What a number rests on. */
public enum Basis {
    MEASURED("measured here"),
    PUBLISHED("published"),
    GUESS("guess");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /** As shown to the maker. */
    public String words() {
        return words;
    }
}
