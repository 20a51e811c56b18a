package jackwork.builds;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.function.BiConsumer;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A number that differs from build to build, and what it does to one.
 *
 * @param name for people
 * @param number value and the interval that holds it 95 times in 100
 * @param isEven drawn evenly between its ends, else normal about its value
 * @param put sets it in a build
 */
record Unknown(String name, Uncertain number, boolean isEven, BiConsumer<Build, Double> put) {

    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** Standard deviations from the middle to either end of a 95 % interval. */
    private static final double TO_THE_END = 1.959963984540054;
    /** Nothing is drawn farther out, standard deviations. */
    private static final double FARTHEST = 3;

    /** A number drawn normally about its value, its sides of their own widths. */
    static Unknown of(String name, Uncertain number, BiConsumer<Build, Double> put) {
        return new Unknown(name, number, false, put);
    }

    /** A number drawn evenly between two ends. */
    static Unknown even(String name, double low, double high, BiConsumer<Build, Double> put) {
        double middle = (low + high) / 2;
        Uncertain number = new Uncertain(middle, low, high, "1", Basis.GUESS, "anywhere, evenly");
        return new Unknown(name, number, true, put);
    }

    boolean isGuess() {
        return number.basis() == Basis.GUESS;
    }

    /**
     * The number at a quantile: normal on either side of its value, with the spread that puts 95 % within the interval;
     * or even.
     *
     * @param u 0 to 1
     */
    double at(double u) {
        if (isEven) {
            return number.low() + u * (number.high() - number.low());
        }
        double z = Math.max(-FARTHEST, Math.min(FARTHEST, NORMAL.inverseCumulativeProbability(u)));
        double half = z > 0 ? number.high() - number.value() : number.value() - number.low();
        return number.value() + z / TO_THE_END * half;
    }
}
