package jackwork.builds;

import java.util.SplittableRandom;

/**
 * A Latin hypercube sample: in every dimension one point in each of n equal strata, in random order (McKay, Beckman
 * and Conover, Technometrics 21, 1979). Its mean varies no more than that of n − 1 plain draws (Owen, Annals of
 * Statistics 25, 1997).
 */
final class LatinHypercube {

    private LatinHypercube() {}

    /** @return [points][dimensions], each within 0 and 1 */
    static double[][] sample(int points, int dimensions, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[][] sample = new double[points][dimensions];
        int[] order = new int[points];
        for (int d = 0; d < dimensions; d++) {
            for (int i = 0; i < points; i++) {
                int j = random.nextInt(i + 1);
                order[i] = order[j];
                order[j] = i;
            }
            for (int i = 0; i < points; i++) {
                sample[i][d] = (order[i] + random.nextDouble()) / points;
            }
        }
        return sample;
    }
}
