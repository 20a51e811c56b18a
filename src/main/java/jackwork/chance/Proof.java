package jackwork.chance;

import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How many tries prove a rate of success: the success run, with failures allowed. The smallest n for which so few
 * failures as that would come no more often than the doubt that is left, were the rate just too low. For none allowed,
 * {@code n = ln(1 − confidence) / ln(rate)}.
 */
public final class Proof {

    private Proof() {}

    /**
     * @param rate to be proved, between 0 and 1
     * @param confidence wanted, between 0 and 1
     * @param failures allowed among the tries
     * @throws IllegalArgumentException when a number is out of its range
     */
    public static int tries(double rate, double confidence, int failures) {
        if (!(rate > 0 && rate < 1 && confidence > 0 && confidence < 1 && failures >= 0)) {
            throw new IllegalArgumentException("rate " + rate + ", confidence " + confidence + ", failures " + failures
                    + ": expected a rate and a confidence between 0 and 1, and no negative failures");
        }
        int enough = failures + 1;
        while (!proves(enough, rate, confidence, failures)) {
            enough *= 2;
        }
        int tooFew = enough / 2;
        while (enough - tooFew > 1) {
            int middle = (enough + tooFew) / 2;
            if (proves(middle, rate, confidence, failures)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }

    private static boolean proves(int tries, double rate, double confidence, int failures) {
        return new BinomialDistribution(tries, 1 - rate).cumulativeProbability(failures) <= 1 - confidence;
    }
}
