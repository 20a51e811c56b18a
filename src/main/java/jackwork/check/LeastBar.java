package jackwork.check;

/**
 * The narrowest bar of a sheet that can be cut at all: the beam chars the wood on both its sides, and what is left between
 * breaks while it is taken out. Common practice, no source.
 */
public final class LeastBar {

    /** In thicknesses of the sheet. */
    private static final double THICKNESSES = 1.0 / 3;
    /** In widths of the cut. */
    private static final double KERFS = 4;

    private LeastBar() {}

    /** mm. */
    public static double of(double thickness, double kerf) {
        return Math.max(THICKNESSES * thickness, KERFS * kerf);
    }

    /** What it rests on, for a formula. */
    public static String words(double thickness, double kerf) {
        return "narrower than a third of the sheet's thickness, " + Words.number(THICKNESSES * thickness)
                + " mm, or than four widths of the cut, " + Words.number(KERFS * kerf)
                + " mm, it chars through or breaks (common practice, no source)";
    }
}
