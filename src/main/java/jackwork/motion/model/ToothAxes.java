package jackwork.motion.model;

/**
 * What teeth in mesh bring beside their row, the tangential force F at the pitch point: a force that drives the
 * two apart, tan(pressure angle) times as much, and friction as a moment between them of at most µ ρ |F|. With the
 * mean loss π µ (1/z_A ± 1/z_B)/2 of the power passed (e.g. Niemann and Winter, Maschinenelemente II, at a
 * contact ratio near 1.5, from memory) ρ is a quarter of the circular pitch.
 */
final class ToothAxes {

    private final int a;
    private final int b;
    private final double spread;
    private final double moment;

    /**
     * @param pressureAngle operating, rad
     * @param pitch circular, mm
     */
    ToothAxes(int a, int b, double pressureAngle, double pitch, double friction) {
        this.a = a;
        this.b = b;
        this.spread = Math.tan(pressureAngle);
        this.moment = friction * pitch / 4;
    }

    int count() {
        return moment > 0 ? 2 : 1;
    }

    /** @param awayX unit vector by which gear A is driven off, at the pitch point */
    void evaluate(Rows rows, int row, int axis, double awayX, double awayY, double atX, double atY) {
        rows.axis(axis, Rows.AxisKind.FOLLOWS, spread, spread, row, -1, -1);
        rows.between(rows.count + axis, a, b, awayX, awayY, atX, atY);
        if (moment > 0) {
            rows.axis(axis + 1, moment, row, -1);
            rows.block(rows.count + axis + 1, a, 0, 0, 1);
            rows.block(rows.count + axis + 1, b, 0, 0, -1);
        }
    }
}
