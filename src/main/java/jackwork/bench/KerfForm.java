package jackwork.bench;

import jackwork.design.WorkshopSplice;
import jackwork.stock.Uncertain;
import java.util.Arrays;
import java.util.List;

/** Pieces cut at a known size ({@link KerfByPieces}). */
final class KerfForm implements Form {

    private static final String PLACE = "laser.kerf";

    @Override
    public String kind() {
        return "kerf";
    }

    @Override
    public List<String> names() {
        return List.of("drawn", "strips", "outside", "hole", "step");
    }

    @Override
    public void check(Measured measured) {
        if (!measured.about().isEmpty()) {
            throw new IllegalArgumentException(
                    "read \"" + measured.about() + "\", expected nothing: there is one laser");
        }
        Forms.requireStep(measured);
        if (kerfs(measured).length == 0) {
            throw new IllegalArgumentException("no widths; expected some of pieces (outside) or of holes (hole)");
        }
    }

    @Override
    public Uncertain of(List<Measured> same) {
        double[] kerfs = same.stream()
                .flatMapToDouble(measured -> Arrays.stream(kerfs(measured)))
                .toArray();
        double step = Forms.coarsest(same, measured -> measured.one("step") / measured.one("strips"));
        return Readings.of(kerfs, step, "mm", "pieces cut and measured");
    }

    private static double[] kerfs(Measured measured) {
        return KerfByPieces.kerfs(
                measured.one("drawn"),
                (int) Math.rint(measured.one("strips")),
                measured.all("outside"),
                measured.all("hole"));
    }

    @Override
    public String place(String about) {
        return PLACE;
    }

    @Override
    public String edit(String workshop, String about, Uncertain value) {
        return WorkshopSplice.measured(workshop, PLACE, value);
    }
}
