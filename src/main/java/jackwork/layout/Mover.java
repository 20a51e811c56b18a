package jackwork.layout;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Finds a better place for one piece among all the others: trials, then downhill from the best of them. */
final class Mover {

    private static final int EVERYWHERE = 6;
    private static final int NEARBY = 6;
    /** Most trials touch something: they are worth more than all others, and jigsaws need them. */
    private static final int TOUCHING = 60;
    /** Trials to go downhill from. */
    private static final int REFINED = 2;
    /** Downhill steps from this share of a piece's reach ... */
    private static final double COARSE = 0.15;
    /** ... to this, then for the best alone ... */
    private static final double MIDDLE = 0.04;
    /** ... to this. */
    private static final double FINE = 2e-4;
    /** A turn for a step of a piece's whole reach, rad. */
    private static final double SWING = 0.3;

    private static final int MOST_STEPS = 200;

    private final Scene scene;
    private final SplittableRandom random;
    private final Trials[] trials;
    private final double[] bestCost = new double[REFINED];
    private final double[][] bestPlace = new double[REFINED][4];

    Mover(Scene scene, List<Shape> shapes, SplittableRandom random) {
        this.scene = scene;
        this.random = random;
        trials = shapes.stream().map(shape -> new Trials(scene, shape, random)).toArray(Trials[]::new);
    }

    /** Moves a piece where it overlaps the others least, if that is less than where it is. */
    void move(int i) {
        Lying now = scene.pieces[i];
        double present = scene.cost(i, now, Double.POSITIVE_INFINITY);
        sample(i, present);
        double least = present;
        double[] place = null;
        for (int k = 0; k < REFINED && bestCost[k] < Double.POSITIVE_INFINITY && least > 0; k++) {
            double cost = downhill(i, bestPlace[k], bestCost[k], COARSE, MIDDLE);
            if (cost < least) {
                least = cost;
                place = bestPlace[k];
            }
        }
        if (place != null) {
            downhill(i, place, least, MIDDLE, FINE);
            scene.sheetOf[i] = (int) place[3];
            now.place(place[0], place[1], place[2]);
            scene.judge(i);
        }
    }

    /** The best of all trials and where it lies now. */
    private void sample(int i, double present) {
        Trials kinds = trials[i];
        Lying now = scene.pieces[i];
        int sheet = scene.sheetOf[i];
        Arrays.fill(bestCost, Double.POSITIVE_INFINITY);
        take(present, now, sheet);
        for (int k = 0; k < EVERYWHERE + TOUCHING + NEARBY && bestCost[0] > 0; k++) {
            boolean fits = k < EVERYWHERE
                    ? kinds.anywhere()
                    : k < EVERYWHERE + TOUCHING ? kinds.touching(i) : kinds.near(now, sheet);
            if (fits) {
                double cost = scene.cost(i, kinds.trial, bestCost[REFINED - 1]);
                if (cost < bestCost[REFINED - 1]) {
                    take(cost, kinds.trial, kinds.sheet);
                }
            }
        }
    }

    private void take(double cost, Lying lies, int sheet) {
        int k = REFINED - 1;
        double[] spare = bestPlace[k];
        while (k > 0 && bestCost[k - 1] > cost) {
            bestCost[k] = bestCost[k - 1];
            bestPlace[k] = bestPlace[k - 1];
            k--;
        }
        bestCost[k] = cost;
        bestPlace[k] = spare;
        spare[0] = lies.x;
        spare[1] = lies.y;
        spare[2] = lies.angle();
        spare[3] = sheet;
    }

    /** Step by step along the axes and across them, steps halved where nothing is better. Writes into {@code place}. */
    private double downhill(int i, double[] place, double cost, double coarse, double fine) {
        Lying trial = trials[i].trial;
        trials[i].sheet = (int) place[3];
        trial.place(place[0], place[1], place[2]);
        double reach = trial.shape.reach;
        double best = cost;
        double share = coarse;
        int kinds = trial.shape.free() ? 10 : 8;
        for (int steps = 0; steps < MOST_STEPS && share > fine && best > 0; steps++) {
            int first = random.nextInt(kinds);
            boolean better = false;
            for (int k = 0; k < kinds && !better; k++) {
                double now = step(i, place, (first + k) % kinds, share, reach, best);
                better = now < best;
                best = Math.min(best, now);
            }
            share *= better ? 1.1 : 0.5;
        }
        return best;
    }

    /** One step of a kind from a place, written there when it is better. */
    private double step(int i, double[] place, int kind, double share, double reach, double best) {
        double sign = kind % 2 == 0 ? 1 : -1;
        double step = sign * share * reach;
        double u = 0;
        double v = 0;
        double swing = 0;
        switch (kind / 2) {
            case 0 -> u = step;
            case 1 -> v = step;
            case 2 -> {
                u = step;
                v = step;
            }
            case 3 -> {
                u = step;
                v = -step;
            }
            default -> swing = sign * share * SWING;
        }
        Lying trial = trials[i].trial;
        trial.turn(place[2] + swing);
        if (!trials[i].within(place[0] + u, place[1] + v)) {
            return Double.POSITIVE_INFINITY;
        }
        double cost = scene.cost(i, trial, best);
        if (cost < best) {
            place[0] = trial.x;
            place[1] = trial.y;
            place[2] = trial.angle();
        }
        return cost;
    }
}
