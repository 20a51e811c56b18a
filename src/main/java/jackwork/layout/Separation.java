package jackwork.layout;

import java.util.List;
import java.util.SplittableRandom;

/** Drives the overlap out of a scene: moves whoever overlaps, and lets the pairs that resist count more and more. */
final class Separation {

    /** Sweeps without a better total before a separation is given up. */
    private static final int PATIENCE = 60;

    /** A total below this share of the least so far is worth going on from. */
    private static final double MUCH_BETTER = 0.98;

    private final List<Shape> shapes;
    private final SplittableRandom random;
    private long moves;

    Separation(List<Shape> shapes, SplittableRandom random) {
        this.shapes = shapes;
        this.random = random;
    }

    /** Of single pieces, so far. */
    long moves() {
        return moves;
    }

    /** Whether none overlaps in the end; else the scene is left as it overlapped least. */
    boolean done(Scene scene, int strikes, Effort until) {
        Mover mover = new Mover(scene, shapes, random);
        scene.resetWeights();
        double least = scene.total();
        double[] leastPlaces = scene.places();
        for (int strike = 0; strike < strikes; strike++) {
            double atStart = least;
            int waited = 0;
            while (waited < PATIENCE) {
                sweep(scene, mover);
                double total = scene.total();
                if (total == 0) {
                    return true;
                }
                waited = total < MUCH_BETTER * least ? 0 : waited + 1;
                if (total < least) {
                    least = total;
                    leastPlaces = scene.places();
                }
                scene.reweigh();
                if (until.over(moves)) {
                    return false;
                }
            }
            scene.restore(leastPlaces, random);
            if (least > MUCH_BETTER * atStart) {
                break;
            }
        }
        return false;
    }

    /** Each piece that overlaps another is moved once, in an order of chance. */
    private void sweep(Scene scene, Mover mover) {
        int count = 0;
        int[] order = new int[scene.pieces.length];
        for (int i = 0; i < order.length; i++) {
            if (scene.overlaps(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k > 0; k--) {
            int other = random.nextInt(k + 1);
            int kept = order[k];
            order[k] = order[other];
            order[other] = kept;
        }
        for (int k = 0; k < count; k++) {
            if (scene.overlaps(order[k])) {
                mover.move(order[k]);
                moves++;
            }
        }
    }
}
