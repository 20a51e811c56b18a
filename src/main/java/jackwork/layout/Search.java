package jackwork.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Shortens the last sheet, drives the overlap out again, and so on; where that fails it begins anew from a layout in which
 * two large pieces have changed places.
 */
final class Search {

    /** Of the effort, spent on new layouts; the rest on pressing the best together. */
    private static final double EXPLORING = 0.75;

    /** Of the length, taken off at a time: halved after each failure, grown again after each success. */
    private static final double MOST_SHRINK = 0.01;

    private static final double LEAST_SHRINK = 0.001;
    private static final double GROWTH = 2;
    /** Shorter by less than this share is no gain. */
    private static final double NO_GAIN = 1e-6;

    /** Fresh starts of a separation from the least overlap that it came to. */
    private static final int STRIKES = 3;

    private static final int LAST_STRIKES = 2;
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

    private final Consumer<Found> told;
    private final Separation separation;

    Search(Room room, List<Shape> shapes, Effort effort, long seed, Best best, Consumer<Found> told) {
        this.room = room;
        this.shapes = shapes;
        this.effort = effort;
        this.random = new SplittableRandom(seed);
        this.separation = new Separation(shapes, random);
        this.best = best;
        this.told = told;
        this.area = shapes.stream().mapToDouble(shape -> shape.area).sum();
        this.least = shapes.stream()
                .mapToDouble(shape -> new Turned(shape, shape.narrowest(room.width())).width())
                .max()
                .orElse(0);
    }

    void run() {
        explore(effort.share(EXPLORING, separation.moves()));
        compress();
    }

    /** Offers a scene without overlap; gives the best of all searches. */
    private Found offer(Scene scene) {
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
        return best.get();
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
        double shrink = MOST_SHRINK;
        List<Near> pool = new ArrayList<>();
        Scene scene = begun(from, shrink);
        while (!until.over(separation.moves()) && gains(scene, from)) {
            boolean done = separation.done(scene, STRIKES, until);
            Found now = done ? offer(scene) : best.get();
            if (now.betterThan(from)) {
                from = now;
                pool.clear();
                shrink = Math.min(MOST_SHRINK, GROWTH * shrink);
                scene = begun(from, shrink);
            } else if (shrink > LEAST_SHRINK) {
                pool.add(new Near(scene.total(), scene.places()));
                shrink = Math.max(LEAST_SHRINK, shrink / 2);
                scene = begun(from, shrink);
                disrupt(scene);
            } else {
                pool.add(new Near(scene.total(), scene.places()));
                pool.sort(Comparator.comparingDouble(Near::total));
                if (pool.size() > POOL) {
                    pool.remove(pool.size() - 1);
                }
                // Rather one of the nearest to a layout.
                int chosen = (int) (random.nextDouble() * random.nextDouble() * pool.size());
                scene.restore(pool.get(chosen).places(), random);
                disrupt(scene);
            }
        }
    }

    private Scene begun(Found from, double shrink) {
        Scene scene = shorter(from, shrink);
        scene.restore(from.places(), random);
        return scene;
    }

    private static boolean gains(Scene scene, Found from) {
        return scene.sheets < from.sheets() || scene.lastLength < from.length() * (1 - NO_GAIN);
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
        Arrays.sort(bySize, Comparator.comparingDouble(i -> -shapes.get(i).area));
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
        double shrink = LEAST_SHRINK;
        while (!effort.over(separation.moves()) && shrink > NO_GAIN) {
            Found from = best.get();
            Scene scene = begun(from, shrink);
            if (!gains(scene, from)) {
                shrink /= 2;
            } else if (separation.done(scene, LAST_STRIKES, effort)) {
                offer(scene);
            } else {
                shrink *= 0.6;
            }
        }
    }
}
