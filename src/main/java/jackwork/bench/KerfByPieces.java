package jackwork.bench;

import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;

/**
 * Pieces cut at a known size: an outside comes out smaller by one kerf, half of it on either side; a hole comes out
 * wider by one.
 */
public final class KerfByPieces {

    private KerfByPieces() {}

    /**
     * @param drawn size in the drawing, mm
     * @param outsides widths measured over pieces, mm
     * @param holes widths measured in holes of the same drawn size, mm
     * @param resolution of the calliper, mm
     * @throws IllegalArgumentException when there are fewer than two readings, or one is far from what was drawn
     */
    public static Uncertain of(double drawn, double[] outsides, double[] holes, double resolution) {
        return of(drawn, 1, outsides, holes, resolution);
    }

    /**
     * @param strips into which each outside was cut, pushed together and measured as one: so many kerfs are missing
     */
    public static Uncertain of(double drawn, int strips, double[] outsides, double[] holes, double resolution) {
        double[] values = kerfs(drawn, strips, outsides, holes);
        return Readings.of(values, resolution / strips, "mm", "cut at " + drawn + " mm and measured");
    }

    /** One kerf for each width. */
    static double[] kerfs(double drawn, int strips, double[] outsides, double[] holes) {
        if (strips < 1) {
            throw new IllegalArgumentException("it was cut into " + strips + " strips, expected 1 or more");
        }
        List<Double> kerfs = new ArrayList<>();
        for (double outside : outsides) {
            kerfs.add((drawn - outside) / strips);
        }
        for (double hole : holes) {
            kerfs.add(hole - drawn);
        }
        for (double kerf : kerfs) {
            if (!(Math.abs(kerf) < 2)) {
                throw new IllegalArgumentException("a piece drawn at " + drawn + " mm is off by " + kerf
                        + " mm; expected less than 2 mm, is it the right piece?");
            }
        }
        return kerfs.stream().mapToDouble(k -> k).toArray();
    }
}
