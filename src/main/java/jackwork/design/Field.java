package jackwork.design;

/**
 * What may be written where a number stands, for whoever asks for it.
 *
 * @param about one sentence for the maker
 * @param unit of a bare number; 1 for a pure one
 * @param whole whether only whole numbers go
 * @param least lower is refused; minus infinity where nothing is
 * @param most higher is refused; infinity where nothing is
 * @param usualFrom lower is unusual
 * @param usualTo higher is unusual
 * @param why what the bounds rest on; empty where there are none
 */
public record Field(
        String about,
        String unit,
        boolean whole,
        double least,
        double most,
        double usualFrom,
        double usualTo,
        String why) {

    private static final Range ANY = new Range(
            "1",
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            "");

    static Field of(Word word) {
        return of(word, Range.of(word).orElse(ANY));
    }

    static Field of(Word word, Range range) {
        return new Field(
                word.about(),
                word.leaf() == Place.class ? range.unit() : word.unit(),
                word.isWhole(),
                range.least(),
                range.most(),
                range.usualFrom(),
                range.usualTo(),
                range.why());
    }
}
