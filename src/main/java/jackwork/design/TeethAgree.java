package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Meshes and racks of one file against each other: two gears mesh once, and a gear has one set of teeth, whatever it runs
 * with. Of two that contradict each other the later one is told. What figure and box say of one gear is held against each
 * other where the teeth are made.
 */
final class TeethAgree {

    private static final double SAME = 1e-9;

    /** @param pair the two that run in each other, whichever was named first */
    private record Run(
            String path,
            List<String> pair,
            List<String> gears,
            double angle,
            @Nullable Double module) {

        static Run of(String path, MeshEntry mesh) {
            List<String> pair = mesh.between().stream().sorted().toList();
            return new Run(path, pair, pair, angle(mesh.pressureAngle()), null);
        }

        static Run of(String path, RackEntry rack) {
            return new Run(
                    path,
                    List.of("rack", rack.gear(), rack.part()),
                    List.of(rack.gear()),
                    angle(rack.pressureAngle()),
                    rack.module());
        }

        private static double angle(@Nullable Double written) {
            return written == null ? MeshEntry.USUAL_ANGLE : written;
        }
    }

    private TeethAgree() {}

    static void check(MeshEntry mesh, String path, Around around) {
        check(Run.of(path, mesh), around);
    }

    static void check(RackEntry rack, String path, Around around) {
        check(Run.of(path, rack), around);
    }

    private static void check(Run run, Around around) {
        for (Run before : all(around.works())) {
            if (before.path().equals(run.path())) {
                return;
            }
            if (before.pair().equals(run.pair())) {
                around.problem(
                        run.path(),
                        "joins the same two as " + before.path()
                                + "; expected each pair once: take one of the two out");
                return;
            }
            String shared = run.gears().stream()
                    .filter(before.gears()::contains)
                    .findFirst()
                    .orElse(null);
            if (shared != null) {
                agree(run, before, shared, around);
            }
        }
    }

    private static void agree(Run run, Run before, String gear, Around around) {
        if (Math.abs(run.angle() - before.angle()) > SAME) {
            around.problem(
                    run.path() + ".pressure-angle",
                    "its teeth have " + run.angle() + "°, and \"" + gear + "\" has " + before.angle() + "° from "
                            + before.path()
                            + "; expected one pressure angle for all that run together: write the same");
        }
        Double mine = run.module();
        Double other = before.module();
        if (mine != null && other != null && Math.abs(mine - other) > SAME) {
            around.problem(
                    run.path() + ".module",
                    "read " + mine + " mm, and \"" + gear + "\" has teeth of " + other + " mm from " + before.path()
                            + "; expected one size for all that run together: write the same");
        }
    }

    /** In the order of the file: meshes, then racks. */
    private static List<Run> all(Works works) {
        List<Run> runs = new ArrayList<>();
        for (Map.Entry<String, MeshEntry> mesh : works.joints(MeshEntry.class).entrySet()) {
            runs.add(Run.of("meshes." + mesh.getKey(), mesh.getValue()));
        }
        for (Map.Entry<String, RackEntry> rack : works.joints(RackEntry.class).entrySet()) {
            runs.add(Run.of("racks." + rack.getKey(), rack.getValue()));
        }
        return runs;
    }
}
