package jackwork.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Shortens the last sheet, drives the overlap out again, and so on; where that fails it begins anew from a layout in which
 * two large pieces have changed places.
 */
final class Search {

    /** Of the effort, spent on new layouts; the rest on pressing the best together. */
    private static final double EXPLORING = 0.75;

    private static final double FIRST_SHRINK = 0.01;
    private static final double LEAST_EXPLORED = 0.001;
    /** Sweeps without a better total before a separation is given up. */
    private static final int PATIENCE = 60;

    private static final int STRIKES = 3;
    private static final int POOL = 12;

    /** A valid layout while it is being searched. */
    record Found(int sheets, double length, double[] places) {
        boolean betterThan(Found other) {
            return sheets != other.sheets ? sheets < other.sheets : length < other.length;
        }
    }

    private record Near(double total, double[] places) {}

    private final Room room;
    private final List<Shape> shapes;
    private final Effort effort;
    private final SplittableRandom random;
    /** Shared by searches side by side. */
    private final Best best;

    private final double area;
    /** No sheet can be shorter when it is the only one, mm. */
    private final double least;

    private final java.util.function.Consumer<Found> told;
    private long moves;

    Search(
            Room room,
            List<Shape> shapes,
            Effort effort,
            long seed,
            Best best,
            java.util.function.Consumer<Found> told) {
        this.room = room;
        this.shapes = shapes;
        this.effort = effort;
        this.random = new SplittableRandom(seed);
        this.best = best;
        this.told = told;
        this.area = shapes.stream().mapToDouble(shape -> shape.area).sum();
        this.least = shapes.stream().mapToDouble(Search::leastLength).max().orElse(0);
    }

    /** The least extent of a piece along the sheet, mm, at any of its angles. */
    private static double leastLength(Shape shape) {
        Lying piece = new Lying(shape);
        int tries = shape.turns.length > 0 ? shape.turns.length : 180;
        double shortest = Double.POSITIVE_INFINITY;
        for (int k = 0; k < tries; k++) {
            piece.turn(shape.turns.length > 0 ? shape.turns[k] : Math.PI * k / tries);
            shortest = Math.min(shortest, piece.maxX - piece.minX);
        }
        return shortest;
    }

    void run() {
        explore(effort.share(EXPLORING, moves));
        compress();
    }

    private Found better(Scene scene) {
        double start = room.start(scene.sheets - 1);
        double length = 0;
        for (int i = 0; i < scene.pieces.length; i++) {
            if (scene.sheetOf[i] == scene.sheets - 1) {
                length = Math.max(length, scene.pieces[i].maxX - start);
            }
        }
        Found found = new Found(scene.sheets, length, scene.places());
        if (best.offer(found)) {
            told.accept(found);
        }
        return found;
    }

    /** The next, shorter thing to try: a shorter last sheet, or one sheet fewer; null when that cannot be. */
    private Scene shorter(Found from, double shrink) {
        double length = from.length() * (1 - shrink);
        int sheets = from.sheets();
        double need = area - (sheets - 1) * room.length() * room.width();
        if (sheets > 1 && (length <= 0 || need < 0.02 * room.length() * room.width())) {
            sheets--;
            length = room.length();
            need = area - (sheets - 1) * room.length() * room.width();
        }
        double bound = Math.max(0, need) / room.width();
        return new Scene(room, shapes, sheets, Math.max(length, sheets == 1 ? Math.max(bound, least) : bound));
    }

    private void explore(Effort until) {
        Found from = best.get();
        double shrink = FIRST_SHRINK;
        List<Near> pool = new ArrayList<>();
        Scene scene = shorter(from, shrink);
        scene.restore(from.places(), random);
        while (!until.over(moves)) {
            if (scene.lastLength >= from.length() && scene.sheets == from.sheets()) {
                return;
            }
            Mover mover = new Mover(scene, shapes, random);
            if (separate(scene, mover, STRIKES, until)) {
                from = better(scene);
                pool.clear();
                scene = shorter(from, shrink);
                scene.restore(from.places(), random);
            } else {
                pool.add(new Near(scene.total(), scene.places()));
                pool.sort(Comparator.comparingDouble(Near::total));
                if (pool.size() > POOL) {
                    pool.remove(pool.size() - 1);
                }
                Found now = best.get();
                if (now.betterThan(from)) {
                    from = now;
                    pool.clear();
                    scene = shorter(from, shrink);
                    scene.restore(from.places(), random);
                } else {
                    double[] places = pool.get((int) (random.nextDouble() * random.nextDouble() * pool.size()))
                            .places();
                    if (shrink > LEAST_EXPLORED) {
                        shrink = Math.max(LEAST_EXPLORED, shrink / 2);
                        scene = shorter(from, shrink);
                        places = from.places();
                    }
                    scene.restore(places, random);
                    disrupt(scene);
                }
            }
        }
    }

    /** Two large pieces change places. */
    private void disrupt(Scene scene) {
        int count = scene.pieces.length;
        if (count < 2) {
            return;
        }
        Integer[] bySize = new Integer[count];
        for (int i = 0; i < count; i++) {
            bySize[i] = i;
        }
        java.util.Arrays.sort(bySize, Comparator.comparingDouble(i -> -shapes.get(i).area));
        int large = Math.max(2, (int) Math.ceil(count * 0.6));
        int a = bySize[random.nextInt(large)];
        int b = bySize[random.nextInt(large)];
        double[] places = scene.places();
        for (int k = 0; k < 4; k++) {
            if (k != 2) {
                double kept = places[4 * a + k];
                places[4 * a + k] = places[4 * b + k];
                places[4 * b + k] = kept;
            }
        }
        scene.restoreWithin(places, random);
    }

    /** From the best, by ever smaller steps. */
    private void compress() {
        double shrink = LEAST_EXPLORED;
        while (!effort.over(moves) && shrink > 1e-6) {
            Found from = best.get();
            Scene scene = shorter(from, shrink);
            if (scene.sheets < from.sheets() || scene.lastLength >= from.length()) {
                shrink /= 2;
                continue;
            }
            scene.restore(from.places(), random);
            if (separate(scene, new Mover(scene, shapes, random), 2, effort)) {
                better(scene);
            } else {
                shrink *= 0.6;
            }
        }
    }

    /** Moves overlapping pieces until none is left, or until that leads nowhere. */
    private boolean separate(Scene scene, Mover mover, int strikes, Effort until) {
        scene.resetWeights();
        double least = scene.total();
        double[] leastPlaces = scene.places();
        int[] order = new int[scene.pieces.length];
        for (int strike = 0; strike < strikes; strike++) {
            double atStart = least;
            int waited = 0;
            while (waited < PATIENCE) {
                int count = 0;
                for (int i = 0; i < order.length; i++) {
                    if (scene.overlaps(i)) {
                        order[count++] = i;
                    }
                }
                if (count == 0) {
                    return true;
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
                double total = scene.total();
                if (total == 0) {
                    return true;
                }
                if (total < least) {
                    waited = total < 0.98 * least ? 0 : waited + 1;
                    least = total;
                    leastPlaces = scene.places();
                } else {
                    waited++;
                }
                scene.reweigh();
                if (until.over(moves)) {
                    return false;
                }
            }
            scene.restore(leastPlaces, random);
            if (least > 0.98 * atStart) {
                break;
            }
        }
        scene.restore(leastPlaces, random);
        return false;
    }
}
