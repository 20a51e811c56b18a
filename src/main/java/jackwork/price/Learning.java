package jackwork.price;

/**
 * How hands get quicker: each time the number of pieces doubles, the average time falls to the same share of what it was
 * (T. P. Wright, Factors Affecting the Cost of Airplanes, Journal of the Aeronautical Sciences 3 (1936) 122), until no
 * more is learnt.
 *
 * @param rate that share, more than 0 and at most 1
 * @param ends pieces after which each takes as long as the last
 */
record Learning(double rate, double ends) {

    static Learning of(Rates rates) {
        return new Learning(rates.number("learning.rate") / 100, rates.number("learning.ends"));
    }

    /** log₂ of the rate: zero or negative. */
    double exponent() {
        return Math.log(rate) / Math.log(2);
    }

    /** Average time of so many pieces, as a share of the first piece's: n^b. */
    double average(double pieces) {
        return total(pieces) / pieces;
    }

    /** Time of so many pieces together, in times of the first: n · n^b. */
    double total(double pieces) {
        if (pieces <= ends) {
            return wright(pieces);
        }
        double last = ends < 2 ? wright(1) : wright(ends) - wright(ends - 1);
        return wright(ends) + (pieces - ends) * last;
    }

    private double wright(double pieces) {
        return Math.pow(pieces, 1 + exponent());
    }

    /** Time of one piece where each piece by itself follows the curve (J. R. Crawford): n^b. */
    double ofPiece(double number) {
        return Math.pow(number, exponent());
    }
}
