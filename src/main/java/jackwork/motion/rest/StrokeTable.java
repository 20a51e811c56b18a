package jackwork.motion.rest;

import jackwork.motion.model.Mechanism;
import java.util.Arrays;
import java.util.List;

/** A stroke while it is being solved. Units as in {@link StrokeResult}. */
final class StrokeTable {

    private final Mechanism mechanism;
    final double[] stroke;
    final double[][] pose;
    final double[][] backPose;
    final double[] press;
    final double[] back;
    final double[] free;
    final double[] share;
    private final double[][] pinLoad;
    private final double[][] rowLoad;
    private final double[] now;
    double closureError;
    double reach = 1;

    StrokeTable(Mechanism mechanism, int samples) {
        this.mechanism = mechanism;
        this.stroke = new double[samples];
        this.pose = new double[samples][mechanism.coordinates()];
        this.backPose = new double[samples][];
        this.press = new double[samples];
        this.back = new double[samples];
        this.free = new double[samples];
        this.share = new double[samples];
        this.pinLoad = new double[samples][mechanism.pins.length];
        this.rowLoad = new double[samples][mechanism.rowCount];
        this.now = new double[mechanism.rowCount];
        for (int i = 0; i < samples; i++) {
            stroke[i] = (double) i / (samples - 1);
        }
    }

    void outOfReach(int i) {
        Arrays.fill(pose[i], Double.NaN);
        backPose[i] = pose[i];
        Arrays.fill(pinLoad[i], Double.NaN);
        Arrays.fill(rowLoad[i], Double.NaN);
        press[i] = back[i] = free[i] = share[i] = Double.NaN;
    }

    void sameWayBack() {
        System.arraycopy(pose, 0, backPose, 0, pose.length);
    }

    void takeRow(int sample, int row, double force) {
        now[row] = force;
        if (Math.abs(force) > Math.abs(rowLoad[sample][row])) {
            rowLoad[sample][row] = force;
        }
    }

    /** Pins bear both their rows at once. */
    void endLoads(int sample) {
        for (int p = 0; p < mechanism.pins.length; p++) {
            int row = mechanism.firstRow[p];
            pinLoad[sample][p] = Math.max(pinLoad[sample][p], Math.hypot(now[row], now[row + 1]));
        }
    }

    StrokeResult result(List<MotionEvent> events) {
        return new StrokeResult(
                mechanism,
                stroke,
                pose,
                backPose,
                press,
                back,
                free,
                share,
                pinLoad,
                rowLoad,
                events,
                reach,
                closureError);
    }
}
