package jackwork.motion.time;

import jackwork.motion.model.Mechanism;
import jackwork.motion.model.Rows;
import jackwork.motion.model.Touch;
import java.util.Arrays;

/**
 * What rows stand for at the start, in the middle and at the end of a step: places of a touch change rows between
 * them. One per thread; allocates nothing after construction.
 */
final class StepPlaces {

    /** Whether a row is of a touch, and the first and one past the last row of its joint, [rows]. */
    private final boolean[] touch;

    private final int[] first;
    private final int[] end;
    private final Rows rows;
    /** Rows that bore at the end of the last solve, shared with the forces, [rows]. */
    private final boolean[] bearing;

    private final boolean[] closed;
    private final long[] middleFeature;
    private final double[] startGap;
    private final long[] startFeature;
    private final boolean[] open;
    private final long[] openFeature;

    StepPlaces(Mechanism mechanism, Rows rows, boolean[] bearing) {
        this.touch = new boolean[rows.count];
        this.first = new int[rows.count];
        this.end = new int[rows.count];
        for (int r = 0; r < rows.count; r++) {
            int joint = mechanism.jointOfRow[r];
            touch[r] = mechanism.joints[joint] instanceof Touch;
            first[r] = mechanism.firstRow[joint];
            end[r] = first[r] + mechanism.joints[joint].rows();
        }
        this.rows = rows;
        this.bearing = bearing;
        this.closed = new boolean[rows.count];
        this.middleFeature = new long[rows.count];
        this.startGap = new double[rows.count];
        this.startFeature = new long[rows.count];
        this.open = new boolean[rows.count];
        this.openFeature = new long[rows.count];
    }

    /** Remembers the gaps at the start of a step, while the rows are there. */
    void noteStart() {
        System.arraycopy(rows.gap, 0, startGap, 0, startGap.length);
        System.arraycopy(rows.feature, 0, startFeature, 0, startFeature.length);
    }

    /** Remembers what the rows stand for in the middle, while they are there; none counts as closed yet. */
    void noteMiddle() {
        Arrays.fill(closed, false);
        System.arraycopy(rows.feature, 0, middleFeature, 0, middleFeature.length);
    }

    /** Remembers what the step leaves open at its end, while the rows are there and before anything is set apart. */
    void noteEnd() {
        for (int r = 0; r < open.length; r++) {
            open[r] = rows.gap[r] >= 0 && rows.gap[r] < Double.POSITIVE_INFINITY;
            openFeature[r] = rows.feature[r];
        }
    }

    /** Whether a row stands for what it stood for at the end of the step, and that was open. */
    boolean leftOpen(int row) {
        return open[row] && openFeature[row] == rows.feature[row];
    }

    void noteClosed(int row) {
        closed[row] = true;
    }

    /** Whether a row that pushes was closed at the start of the step. */
    boolean wasClosed(int row) {
        return closed[row];
    }

    /**
     * Gap at the start of what a row stands for in the middle; of a place that was not seen then, by its rate.
     *
     * @param velocity at the start
     */
    double gapAtStart(int row, double h, double[] velocity) {
        if (!touch[row] && startGap[row] < Double.POSITIVE_INFINITY) {
            return startGap[row];
        }
        for (int r = first[row]; touch[row] && r < end[row]; r++) {
            if (startFeature[r] == rows.feature[row]) {
                return startGap[r];
            }
        }
        return gapBackFromMiddle(row, h, velocity);
    }

    /** Gap in the middle, taken back by its rate. */
    double gapBackFromMiddle(int row, double h, double[] velocity) {
        return rows.gap[row] - 0.5 * h * rows.rate(row, velocity);
    }

    /**
     * Which row stood for what a row stands for now, in the middle of the step. One that was not there yet goes on from
     * one that bore and is no more, as where a disc rolls over a corner.
     *
     * @return the row, −1 when there was none
     */
    int inTheMiddle(int row) {
        if (!touch[row]) {
            return row;
        }
        for (int r = first[row]; r < end[row]; r++) {
            if (middleFeature[r] == rows.feature[row]) {
                return r;
            }
        }
        for (int r = first[row]; r < end[row]; r++) {
            boolean gone = bearing[r];
            for (int k = first[row]; k < end[row] && gone; k++) {
                gone = rows.feature[k] != middleFeature[r];
            }
            if (gone) {
                return r;
            }
        }
        return -1;
    }
}
