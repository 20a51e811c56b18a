package jackwork.motion.model;

/**
 * Keeps angle(A) − angle(B) within [from, to], rad. Its rows are taken at {@link ModelLimits#ARM} from the turning
 * point, so that gaps are mm and forces µN there: the moment is ModelLimits.ARM times as much.
 */
final class AngleStop extends Stop {

    private final int a;
    private final int b;
    private final double from;
    private final double to;

    AngleStop(String name, int a, int b, double from, double to) {
        super(name);
        this.a = a;
        this.b = b;
        this.from = from;
        this.to = to;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double angle = rows.angle(a) - rows.angle(b);
        rows.row(row, ModelLimits.ARM * (angle - from));
        rows.block(row, a, 0, 0, ModelLimits.ARM);
        rows.block(row, b, 0, 0, -ModelLimits.ARM);
        rows.row(row + 1, ModelLimits.ARM * (to - angle));
        rows.block(row + 1, a, 0, 0, -ModelLimits.ARM);
        rows.block(row + 1, b, 0, 0, ModelLimits.ARM);
    }
}
