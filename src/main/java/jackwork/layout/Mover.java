package jackwork.layout;

import java.util.List;
import java.util.SplittableRandom;

/** Finds a better place for one piece among all the others: trials all over and nearby, then downhill from the best. */
final class Mover {

    private static final int EVERYWHERE = Integer.getInteger("ev", 40);
    private static final int TOUCHING = Integer.getInteger("to", 20);
    private static final int NEARBY = Integer.getInteger("ne", 20);
    private static final int REFINED = 3;
    /** Downhill steps from this share of a piece's reach ... */
    private static final double COARSE = 0.15;
    /** ... to this. */
    private static final double FINE = 2e-4;

    private final Scene scene;
    private final SplittableRandom random;
    private final Lying[] trials;
    /** Angles that set one of a piece's long edges upright or level, for pieces free to turn. */
    private final double[][] neat;

    private final double[] bestCost = new double[REFINED];
    private final double[][] bestPlace = new double[REFINED][4];

    Mover(Scene scene, List<Shape> shapes, SplittableRandom random) {
        this.scene = scene;
        this.random = random;
        trials = new Lying[shapes.size()];
        neat = new double[shapes.size()][];
        for (int i = 0; i < trials.length; i++) {
            trials[i] = new Lying(shapes.get(i));
            neat[i] = neat(shapes.get(i));
        }
    }

    private static double[] neat(Shape shape) {
        int longest = 0;
        double most = 0;
        for (int k = 0; k < shape.x.length; k++) {
            double length = Math.hypot(shape.x[shape.next[k]] - shape.x[k], shape.y[shape.next[k]] - shape.y[k]);
            if (length > most) {
                most = length;
                longest = k;
            }
        }
        double lies = Math.atan2(
                shape.y[shape.next[longest]] - shape.y[longest], shape.x[shape.next[longest]] - shape.x[longest]);
        double[] angles = new double[8];
        for (int k = 0; k < 4; k++) {
            angles[k] = k * Math.PI / 2;
            angles[k + 4] = k * Math.PI / 2 - lies;
        }
        return angles;
    }

    /** Moves a piece where it overlaps the others least, if that is less than where it is. */
    void move(int i) {
        Lying trial = trials[i];
        Lying now = scene.pieces[i];
        double present = scene.cost(i, now, Double.POSITIVE_INFINITY);
        for (int k = 0; k < REFINED; k++) {
            bestCost[k] = Double.POSITIVE_INFINITY;
        }
        take(present, now.x, now.y, now.angle(), scene.sheetOf[i]);
        for (int k = 0; k < EVERYWHERE; k++) {
            if (anywhere(i, trial)) {
                tryHere(i, trial);
            }
        }
        for (int k = 0; k < TOUCHING; k++) {
            if (touching(i, trial)) {
                tryHere(i, trial);
            }
        }
        for (int k = 0; k < NEARBY; k++) {
            near(i, trial, now);
            tryHere(i, trial);
        }
        double least = present;
        double[] place = null;
        for (int k = 0; k < REFINED && bestCost[k] < Double.POSITIVE_INFINITY; k++) {
            double cost = downhill(i, trial, bestPlace[k], bestCost[k], COARSE, FINE);
            if (cost < least) {
                least = cost;
                place = bestPlace[k];
            }
            if (cost == 0) {
                break;
            }
        }
        if (place != null) {
            scene.sheetOf[i] = (int) place[3];
            now.place(place[0], place[1], place[2]);
            scene.judge(i);
        }
    }

    private int sheetOfTrial;

    private boolean anywhere(int i, Lying trial) {
        int sheet = scene.sheets == 1 ? 0 : random.nextInt(scene.sheets);
        trial.turn(angle(i, trial.shape));
        double freeX = scene.lengthOf(sheet) - (trial.maxX - trial.minX);
        double freeY = scene.room.width() - (trial.maxY - trial.minY);
        if (freeX < 0 || freeY < 0) {
            return false;
        }
        sheetOfTrial = sheet;
        trial.move(
                scene.room.start(sheet) - trial.minX + random.nextDouble() * freeX,
                -trial.minY + random.nextDouble() * freeY);
        return true;
    }

    /** Corner on corner of another piece, with an edge of each along the other where the angles allow. */
    private boolean touching(int i, Lying trial) {
        int j = random.nextInt(scene.pieces.length);
        if (j == i) {
            return false;
        }
        Lying other = scene.pieces[j];
        Turned fixed = other.turned();
        int edge = random.nextInt(fixed.x.length);
        int to = other.shape.next[edge];
        double alongX = fixed.x[to] - fixed.x[edge];
        double alongY = fixed.y[to] - fixed.y[edge];
        Shape shape = trial.shape;
        int own = 0;
        if (shape.free()) {
            own = random.nextInt(shape.x.length);
            int ownTo = shape.next[own];
            trial.turn(Math.atan2(-alongY, -alongX)
                    - Math.atan2(shape.y[ownTo] - shape.y[own], shape.x[ownTo] - shape.x[own]));
        } else {
            for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
                trial.turn(shape.turns[random.nextInt(shape.turns.length)]);
                own = random.nextInt(shape.x.length);
                int ownTo = shape.next[own];
                double u = trial.turned().x[ownTo] - trial.turned().x[own];
                double v = trial.turned().y[ownTo] - trial.turned().y[own];
                double dot = u * alongX + v * alongY;
                if (dot < 0 && Math.abs(u * alongY - v * alongX) < 1e-6 * -dot) {
                    break;
                }
            }
        }
        boolean head = random.nextBoolean();
        int mine = head ? shape.next[own] : own;
        int its = head ? edge : to;
        sheetOfTrial = scene.sheetOf[j];
        return within(trial, other.x + fixed.x[its] - trial.turned().x[mine], other.y + fixed.y[its] - trial.turned().y[mine]);
    }

    private static final int ATTEMPTS = Integer.getInteger("at", 4);

    private double angle(int i, Shape shape) {
        if (shape.turns.length > 0) {
            return shape.turns[random.nextInt(shape.turns.length)];
        }
        return random.nextInt(10) < 7 ? neat[i][random.nextInt(8)] : random.nextDouble(2 * Math.PI);
    }

    private void near(int i, Lying trial, Lying now) {
        double angle = now.angle();
        if (trial.shape.turns.length > 1 && random.nextInt(4) == 0) {
            angle = trial.shape.turns[random.nextInt(trial.shape.turns.length)];
        } else if (trial.shape.turns.length == 0 && random.nextInt(3) == 0) {
            angle += (random.nextDouble() - 0.5) * 0.4;
        }
        sheetOfTrial = scene.sheetOf[i];
        double reach = 0.4 * trial.shape.reach;
        trial.turn(angle);
        within(trial, now.x + (random.nextDouble() - 0.5) * 2 * reach, now.y + (random.nextDouble() - 0.5) * 2 * reach);
    }

    /** Shifts the trial there, or as near as the sheet allows; false when it fits it at no place. */
    private boolean within(Lying trial, double toX, double toY) {
        double start = scene.room.start(sheetOfTrial);
        double end = start + scene.lengthOf(sheetOfTrial);
        double left = start + (trial.x - trial.minX);
        double right = end - (trial.maxX - trial.x);
        double low = trial.y - trial.minY;
        double high = scene.room.width() - (trial.maxY - trial.y);
        if (left > right || low > high) {
            return false;
        }
        trial.move(Math.max(left, Math.min(right, toX)), Math.max(low, Math.min(high, toY)));
        return true;
    }

    private boolean standsOnSheet(Lying trial) {
        double start = scene.room.start(sheetOfTrial);
        return trial.minX >= start - 1e-9
                && trial.maxX <= start + scene.lengthOf(sheetOfTrial) + 1e-9
                && trial.minY >= -1e-9
                && trial.maxY <= scene.room.width() + 1e-9;
    }

    private void tryHere(int i, Lying trial) {
        if (standsOnSheet(trial)) {
            double cost = scene.cost(i, trial, bestCost[REFINED - 1]);
            if (cost < bestCost[REFINED - 1]) {
                take(cost, trial.x, trial.y, trial.angle(), sheetOfTrial);
            }
        }
    }

    private void take(double cost, double x, double y, double angle, int sheet) {
        int k = REFINED - 1;
        double[] spare = bestPlace[k];
        while (k > 0 && bestCost[k - 1] > cost) {
            bestCost[k] = bestCost[k - 1];
            bestPlace[k] = bestPlace[k - 1];
            k--;
        }
        bestCost[k] = cost;
        bestPlace[k] = spare;
        spare[0] = x;
        spare[1] = y;
        spare[2] = angle;
        spare[3] = sheet;
    }

    /** Step by step along the axes and across them, steps halved where nothing is better. Writes into {@code place}. */
    private double downhill(int i, Lying trial, double[] place, double cost, double coarse, double fine) {
        boolean free = trial.shape.turns.length == 0;
        double best = cost;
        double step = coarse * trial.shape.reach;
        double swing = coarse * 0.3;
        double least = fine * trial.shape.reach;
        sheetOfTrial = (int) place[3];
        trial.place(place[0], place[1], place[2]);
        for (int steps = 0; steps < 200 && step > least && best > 0; steps++) {
            boolean better = false;
            int kinds = free ? 5 : 4;
            int first = random.nextInt(kinds);
            for (int k = 0; k < kinds && !better; k++) {
                int kind = (first + k) % kinds;
                for (int sign = -1; sign <= 1 && !better; sign += 2) {
                    double u = place[0];
                    double v = place[1];
                    double a = place[2];
                    switch (kind) {
                        case 0 -> u += sign * step;
                        case 1 -> v += sign * step;
                        case 2 -> {
                            u += sign * step;
                            v += sign * step;
                        }
                        case 3 -> {
                            u += sign * step;
                            v -= sign * step;
                        }
                        default -> a += sign * swing;
                    }
                    if (trial.angle() != a) {
                        trial.turn(a);
                    }
                    if (within(trial, u, v)) {
                        double now = scene.cost(i, trial, best);
                        if (now < best) {
                            best = now;
                            place[0] = trial.x;
                            place[1] = trial.y;
                            place[2] = a;
                            better = true;
                        }
                    }
                }
            }
            if (better) {
                step *= 1.1;
            } else {
                step *= 0.5;
                swing *= 0.5;
            }
        }
        return best;
    }
}
