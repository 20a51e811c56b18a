package jackwork.price;

/**
 * Shares of good ones, stage by stage.
 *
 * @param fails share of pieces that do not pass their trial at once; each of them takes rework first
 * @param scrap share of those that is given up after it
 */
record Yields(double cut, double print, double dress, double build, double fails, double scrap) {

    static Yields of(Rates rates) {
        return new Yields(
                rates.number("yields.cut") / 100,
                rates.number("yields.print") / 100,
                rates.number("yields.dress") / 100,
                rates.number("yields.build") / 100,
                1 - rates.number("yields.first-time") / 100,
                rates.number("yields.scrap") / 100);
    }

    /** Share of what enters a stage that leaves it good. */
    double of(Stage stage) {
        return switch (stage) {
            case CUT -> cut;
            case PRINT -> print;
            case DRESS -> dress;
            case BUILD -> build;
            case TRY -> 1 - fails * scrap;
            case PACK -> 1;
        };
    }

    /** How many must go into a stage for one good piece at the end: 1 over the product of yields from there on. */
    double into(Stage stage) {
        double product = 1;
        for (Stage each : stage.onward()) {
            product *= of(each);
        }
        return 1 / product;
    }

    /** Pieces given up for each good one. */
    double givenUp() {
        return into(Stage.TRY) * fails * scrap;
    }
}
