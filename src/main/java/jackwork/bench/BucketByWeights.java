package jackwork.bench;

import jackwork.check.CoinSeat;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;

/**
 * The empty bucket loaded on its floor, a known way from its pivot: the weight at which it just tips, and, taken off
 * little by little, the one at which it just falls back. Friction helps neither:
 * <pre>
 *   m_tips g a = M + F      m_falls g a = M − F
 * </pre>
 * with M what closes it and F the bearing's friction; µ = F / (r W), W all that the rod carries meanwhile.
 *
 * @param closing M, N·mm
 * @param friction F, N·mm
 * @param coefficient µ between rod and bucket
 * @param uncertainty of M and of F by the step between weights, ± N·mm
 * @param coefficientUncertainty the same of µ
 */
public record BucketByWeights(
        double closing, double friction, double coefficient, double uncertainty, double coefficientUncertainty) {

    /**
     * @param tips least mass that tips it, g
     * @param fallsBack greatest mass at which it falls back, g
     * @param arm horizontal distance of the mass from the pivot, mm
     * @param step between the masses tried, g
     * @throws IllegalArgumentException when it falls back with more than tips it, or a number is not positive
     */
    public static BucketByWeights of(Assembly assembly, double tips, double fallsBack, double arm, double step) {
        if (!(arm > 0 && step > 0 && fallsBack >= 0 && tips > 0)) {
            throw new IllegalArgumentException(
                    "masses and the arm are positive numbers, in g and mm; a bucket that never falls back reads 0");
        }
        if (fallsBack > tips) {
            throw new IllegalArgumentException("it falls back with " + fallsBack + " g and tips with " + tips
                    + " g: friction works against both, so the first is never more");
        }
        CoinWorks works = assembly.coinWorks();
        double closing = CoinSeat.weight((tips + fallsBack) / 2) * arm;
        double friction = CoinSeat.weight((tips - fallsBack) / 2) * arm;
        double carried = CoinSeat.weight(assembly.body(works.bucket()).mass() + (tips + fallsBack) / 2);
        double half = CoinSeat.weight(step / 2) * arm;
        double bearing = works.rodRadius() * carried;
        double uncertainty = half / Math.sqrt(2);
        return new BucketByWeights(closing, friction, friction / bearing, uncertainty, uncertainty / bearing);
    }
}
