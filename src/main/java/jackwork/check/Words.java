package jackwork.check;

/** Numbers as findings print them: no more figures than a maker can use. */
public final class Words {

    private Words() {}

    /** Three significant figures, plain notation. */
    public static String number(double value) {
        return Measure.of(value, "1").words();
    }

    public static String stroke(double stroke) {
        return Measure.stroke(stroke).words();
    }
}
