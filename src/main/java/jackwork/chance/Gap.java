package jackwork.chance;

import org.hipparchus.distribution.discrete.HypergeometricDistribution;

/**
 * Two counts beside each other, so many passes of so many tries each. Were both draws from one rate, how often would chance
 * alone set them at least so far apart? Fisher's exact test, two-sided: of all ways to share out the passes, those no
 * likelier than what was seen.
 */
public final class Gap {

    /** Ways as likely as the seen one but for rounding count as such. */
    private static final double ROUNDING = 1e-7;

    private Gap() {}

    /**
     * @return between 0 and 1; 1 when there were no tries on one side
     * @throws IllegalArgumentException when there are more passes than tries, or fewer than none
     */
    public static double chance(int passes, int tries, int otherPasses, int otherTries) {
        if (passes < 0 || passes > tries || otherPasses < 0 || otherPasses > otherTries) {
            throw new IllegalArgumentException(passes + " of " + tries + " and " + otherPasses + " of " + otherTries
                    + ": expected 0 to all of them");
        }
        if (tries == 0 || otherTries == 0) {
            return 1;
        }
        HypergeometricDistribution shares =
                new HypergeometricDistribution(tries + otherTries, passes + otherPasses, tries);
        double seen = shares.probability(passes) * (1 + ROUNDING);
        double sum = 0;
        for (int k = shares.getSupportLowerBound(); k <= shares.getSupportUpperBound(); k++) {
            double likely = shares.probability(k);
            sum += likely <= seen ? likely : 0;
        }
        return Math.min(1, sum);
    }
}
