package jackwork.motion.model;

/** Dry friction of a folded figure: a moment on the lever, of its own size either way. */
final class FigureDrag extends Joint {

    private final int lever;
    private final FoldedFigure figure;

    FigureDrag(int lever, FoldedFigure figure) {
        super("friction of the figure");
        this.lever = lever;
        this.figure = figure;
    }

    @Override
    public int rows() {
        return 0;
    }

    @Override
    public int axes() {
        return 1;
    }

    @Override
    public int blocks() {
        return 1;
    }

    @Override
    public void evaluate(Rows rows, int row, int axis) {
        double angle = rows.angle(lever);
        double against = figure.dragAgainstTurning(angle);
        double along = figure.dragAgainstTurningBack(angle);
        rows.axis(axis, Rows.AxisKind.DRAG, along, against, -1, -1, -1);
        rows.block(rows.count + axis, lever, 0, 0, 1);
    }
}
