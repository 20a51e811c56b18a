package jackwork.layout;

import java.util.SplittableRandom;

/**
 * Where one piece might lie: anywhere, near where it lies now, in touch with another piece or with the sheet's edges. Where
 * pieces fit exactly, only touching finds it.
 */
final class Trials {

    /** Edges of which the one's direction over the other's is less, rad, are taken for parallel. */
    private static final double PARALLEL = 1e-6;
    /** Pairs of edges looked at for parallel ones, for pieces of few angles. */
    private static final int PAIRS = 4;
    /** How far from its place a piece is tried nearby, as a share of its reach. */
    private static final double NEARBY = 0.4;

    private final Scene scene;
    private final SplittableRandom random;
    /** The piece that is being tried. */
    final Lying trial;
    /** Where {@link #trial} lies. */
    int sheet;

    Trials(Scene scene, Shape shape, SplittableRandom random) {
        this.scene = scene;
        this.random = random;
        trial = new Lying(shape);
    }

    /** All of these give false when the piece, so turned, fits the sheet nowhere. */
    boolean anywhere() {
        sheet = scene.sheets == 1 ? 0 : random.nextInt(scene.sheets);
        trial.turn(angle());
        double freeX = scene.lengthOf(sheet) - trial.turned().width();
        double freeY = scene.room.width() - trial.turned().height();
        return within(
                scene.room.start(sheet) - trial.minX + random.nextDouble() * freeX,
                -trial.minY + random.nextDouble() * freeY);
    }

    boolean near(Lying now, int sheetNow) {
        Shape shape = trial.shape;
        double angle = now.angle();
        if (shape.free() && random.nextInt(3) == 0) {
            angle += (random.nextDouble() - 0.5) * 0.4;
        } else if (!shape.free() && random.nextInt(4) == 0) {
            angle = shape.turns[random.nextInt(shape.turns.length)];
        }
        sheet = sheetNow;
        trial.turn(angle);
        double most = NEARBY * shape.reach;
        return within(now.x + (2 * random.nextDouble() - 1) * most, now.y + (2 * random.nextDouble() - 1) * most);
    }

    /**
     * Corner on corner of another piece, an edge of each along the other where the angles allow; or, as often as on any one
     * piece, at the sheet's edges.
     */
    boolean touching(int i) {
        int j = random.nextInt(scene.pieces.length);
        if (j == i) {
            return atSheetsEdge();
        }
        Lying other = scene.pieces[j];
        Turned its = other.turned();
        int edge = other.shape.edgeAt(random.nextDouble());
        int end = other.shape.next[edge];
        int own = against(its.x[end] - its.x[edge], its.y[end] - its.y[edge]);
        boolean head = random.nextBoolean();
        Turned mine = trial.turned();
        int corner = head ? trial.shape.next[own] : own;
        int to = head ? edge : end;
        sheet = scene.sheetOf[j];
        return within(other.x + its.x[to] - mine.x[corner], other.y + its.y[to] - mine.y[corner]);
    }

    /** Turns the piece so that one of its edges runs against a direction, if that can be, and gives that edge. */
    private int against(double alongX, double alongY) {
        Shape shape = trial.shape;
        int own = shape.edgeAt(random.nextDouble());
        if (shape.free()) {
            trial.turn(Math.atan2(-alongY, -alongX) - shape.direction(own));
            return own;
        }
        for (int pair = 0; pair < PAIRS; pair++) {
            own = shape.edgeAt(random.nextDouble());
            trial.turn(shape.turns[random.nextInt(shape.turns.length)]);
            Turned mine = trial.turned();
            double u = mine.x[shape.next[own]] - mine.x[own];
            double v = mine.y[shape.next[own]] - mine.y[own];
            double dot = u * alongX + v * alongY;
            if (dot < 0 && Math.abs(u * alongY - v * alongX) < -PARALLEL * dot) {
                break;
            }
        }
        return own;
    }

    /** In a corner of a sheet, or anywhere along one of its edges. */
    private boolean atSheetsEdge() {
        double beyond = scene.room.length() + scene.room.width();
        return anywhere()
                && within(trial.x + (random.nextInt(3) - 1) * beyond, trial.y + (random.nextInt(3) - 1) * beyond);
    }

    /** A piece free to turn mostly lies with an edge level or upright. */
    private double angle() {
        Shape shape = trial.shape;
        if (!shape.free()) {
            return shape.turns[random.nextInt(shape.turns.length)];
        }
        double upright = random.nextInt(4) * Math.PI / 2;
        return switch (random.nextInt(10)) {
            case 0, 1 -> random.nextDouble(2 * Math.PI);
            case 2 -> upright;
            default -> upright - shape.direction(shape.edgeAt(random.nextDouble()));
        };
    }

    /** Shifts the piece there, or as near as the sheet allows; false when it fits it at no place. */
    boolean within(double toX, double toY) {
        double start = scene.room.start(sheet);
        Turned turned = trial.turned();
        double left = start - turned.minX;
        double right = start + scene.lengthOf(sheet) - turned.maxX;
        double low = -turned.minY;
        double high = scene.room.width() - turned.maxY;
        if (left > right || low > high) {
            return false;
        }
        trial.move(Math.max(left, Math.min(right, toX)), Math.max(low, Math.min(high, toY)));
        return true;
    }
}
