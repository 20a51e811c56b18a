package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param on the part that carries it, for whoever sews; need not be said
 * @param outline id of its closed outline in the drawing, as it is once sewn
 * @param hem beyond the seam, mm; 6 when absent
 * @param grain direction of its threads, degrees counter-clockwise from the right; 90 when absent
 * @param from where it is fixed to a part
 * @param to where else it is fixed, to the same part or another
 * @param length of cloth between the two, mm; as drawn when absent
 */
@About("A piece of cloth on a figure: its pattern is printed, and it is checked to be long enough.")
public record ClothEntry(
        @Nullable String on,
        String outline,
        @Nullable @Unit("mm") Double hem,
        @Nullable @Unit("deg") Double grain,
        @Nullable PointOf from,
        @Nullable PointOf to,
        @Nullable @Unit("mm") Double length) {

    private static final double USUAL_HEM = 6;
    private static final double UP = 90;

    /** mm. */
    public double hemOrUsual() {
        return hem == null ? USUAL_HEM : hem;
    }

    /** Degrees. */
    public double grainOrUsual() {
        return grain == null ? UP : grain;
    }
}
