package jackwork.motion.model;

/**
 * An unstretchable string from a point of one body, through eyelets and round posts, to a point of
 * another: it pulls only, {@code length − path ≥ 0}. Each post has a winding side and is left out of the
 * path where its wrap would be negative; an eyelet holds the string whichever way it bends.
 *
 * <p>Posts are circles with signed radius ρ (positive: wound counter-clockwise, centre on the left).
 * Between circles i and j, D apart in direction δ, the span has direction
 * {@code α = δ − asin((ρ_j − ρ_i)/D)} and length {@code √(D² − (ρ_j − ρ_i)²)}.
 *
 * <p>Directions tell a wrap but for whole turns. As drawn it is from −90° to 270°, and so many whole turns more as the file
 * says; from there on it is followed ({@link Rows#wound}): of all wraps that look alike the one nearest to the last.
 *
 * <p>The row's force is the tension of the first span. Each guide has an axis on which the tensions of all
 * further spans change by friction, within e^{±µβ} of the span before (the capstan law, β the wrap).
 */
public final class Cord extends Joint {

    /**
     * What the string runs over.
     *
     * @param centre in the body that carries it
     * @param radius 0 for an eyelet, mm
     * @param side +1 wound counter-clockwise, −1 clockwise; an eyelet's does not count
     * @param wholeTurns round a post, beside what the drawing shows
     * @param friction string on guide
     */
    record Guide(Anchor centre, double radius, int side, int wholeTurns, double friction) {}

    private final Anchor a;
    private final Anchor b;
    private final Guide[] guides;
    private final double length;

    /** @param length of the whole string, mm */
    Cord(String name, Anchor a, Anchor b, Guide[] guides, double length) {
        super(name);
        this.a = a;
        this.b = b;
        this.guides = guides.clone();
        this.length = length;
    }

    /** Whether it goes round a post, on which it can be wound up. */
    boolean winds() {
        for (Guide guide : guides) {
            if (guide.radius() > 0) {
                return true;
            }
        }
        return false;
    }

    @Override
    public int rows() {
        return 1;
    }

    @Override
    public int axes() {
        return guides.length;
    }

    @Override
    public int blocks() {
        return 2 * guides.length + 2;
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    String what(int row) {
        return "string " + name();
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        long on = guidesTouched(rows, axis);
        rows.feature[row] = on;
        rows.row(row, 0);
        for (int g = 0; g < guides.length; g++) {
            rows.axis(axis + g, Rows.AxisKind.FRICTION, 0, 0, row, -1, g == 0 ? -1 : axis + g - 1);
        }
        double path = 0;
        double before = Double.NaN;
        int from = -1;
        while (from < guides.length) {
            int to = next(from, on);
            double toX = point(to).x(rows) - point(from).x(rows);
            double toY = point(to).y(rows) - point(from).y(rows);
            double step = signed(to) - signed(from);
            double distance = Math.hypot(toX, toY);
            double span = Math.sqrt(Math.max(0, distance * distance - step * step));
            double direction = Math.atan2(toY, toX) - Math.asin(clamp(step / distance));
            path += span;
            if (from >= 0) {
                double wrap = wrap(rows, axis, from, before, direction);
                rows.wound[axis + from] = wrap;
                path += wrap * guides[from].radius();
                bound(rows, axis + from, guides[from].friction() * Math.abs(wrap));
            }
            pull(rows, row, from, to, direction);
            for (int g = 0; g < guides.length && g <= from; g++) {
                pull(rows, rows.count + axis + g, from, to, direction);
            }
            before = direction;
            from = to;
        }
        rows.gap[row] = length - path;
    }

    /** The capstan law's two ends: how far the next span's tension may be above and below this one's. */
    private static void bound(Rows rows, int axis, double power) {
        rows.along[axis] = Math.expm1(power);
        rows.against[axis] = -Math.expm1(-power);
    }

    /** A span's unit pull on its two ends, at the points of touch. */
    private void pull(Rows rows, int row, int from, int to, double direction) {
        double ux = Math.cos(direction);
        double uy = Math.sin(direction);
        double startX = point(from).x(rows) + signed(from) * uy;
        double startY = point(from).y(rows) - signed(from) * ux;
        double endX = point(to).x(rows) + signed(to) * uy;
        double endY = point(to).y(rows) - signed(to) * ux;
        rows.push(row, point(from).body(), ux, uy, startX, startY);
        rows.push(row, point(to).body(), -ux, -uy, endX, endY);
    }

    /** Angle by which the string turns on a guide, on the guide's side. */
    private double wrap(Rows rows, int axis, int g, double before, double after) {
        double turn = Math.IEEEremainder(after - before, 2 * Math.PI);
        if (guides[g].radius() == 0) {
            return Math.abs(turn);
        }
        double onSide = guides[g].side() * turn;
        double last = rows.wound[axis + g];
        if (Double.isNaN(last)) {
            double drawn = onSide < -Math.PI / 2 ? onSide + 2 * Math.PI : onSide;
            return drawn + 2 * Math.PI * guides[g].wholeTurns();
        }
        return onSide + 2 * Math.PI * Math.rint((last - onSide) / (2 * Math.PI));
    }

    /** Bit g set where guide g is touched; posts are let go one at a time, the most negative wrap first. */
    private long guidesTouched(Rows rows, int axis) {
        long on = (1L << guides.length) - 1;
        for (int k = 0; k < guides.length; k++) {
            int worst = -1;
            double least = 0;
            double before = Double.NaN;
            int from = -1;
            while (from < guides.length) {
                int to = next(from, on);
                double toX = point(to).x(rows) - point(from).x(rows);
                double toY = point(to).y(rows) - point(from).y(rows);
                double direction =
                        Math.atan2(toY, toX) - Math.asin(clamp((signed(to) - signed(from)) / Math.hypot(toX, toY)));
                if (from >= 0) {
                    double wrap = wrap(rows, axis, from, before, direction);
                    if (wrap < least) {
                        least = wrap;
                        worst = from;
                    }
                }
                before = direction;
                from = to;
            }
            if (worst < 0) {
                return on;
            }
            on &= ~(1L << worst);
            rows.wound[axis + worst] = least;
        }
        return on;
    }

    private int next(int from, long on) {
        int to = from + 1;
        while (to < guides.length && (on & (1L << to)) == 0) {
            to++;
        }
        return to;
    }

    private Anchor point(int at) {
        return at < 0 ? a : at == guides.length ? b : guides[at].centre();
    }

    private double signed(int at) {
        return at < 0 || at == guides.length ? 0 : guides[at].radius() * guides[at].side();
    }

    private static double clamp(double value) {
        return Math.max(-1, Math.min(1, value));
    }
}
