package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.stock.Basis;
import jackwork.stock.FrictionPair;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The room in holes, how long bearings are, and how far that lets a body tilt. */
@Tag("quick")
class BearingTest {

    private static final PinJoint PIN = new PinJoint(
            "pivot",
            0,
            1,
            Point.ORIGIN,
            1.5,
            new FrictionPair("a", "b", new Uncertain(0.3, 0.3, 0.3, "1", Basis.GUESS, ""), ""));

    private static final String ALL_LAYERS =
            "bucket-pivot: +\\{parts: \\[back, bucket-hub, bucket-far, bucket-core, bucket-near, front\\]";

    @TempDir
    private Path folder;

    private Assembly heron(String from, String to) throws IOException {
        Path hut = DemoCopy.at(folder.resolve("hut"));
        Path box = hut.resolve("boxes/marsh-box/box.yaml");
        String text = Files.readString(box);
        assertThat(text).containsPattern(from);
        Files.writeString(box, text.replaceAll(from, to));
        return Assembler.assemble(DesignReader.read(hut.resolve("heron")));
    }

    private static Variation variation(Assembly assembly, String name) {
        return Variation.ofHoles(assembly, false).stream()
                .filter(variation -> variation.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Assembly beyond(Assembly assembly, String name, double by) {
        Variation variation = variation(assembly, name);
        return variation.with().apply(assembly, variation.number().value() + by);
    }

    /** Four layers of the marsh box, two of each sheet; on the reed box the strut is of two. */
    @ParameterizedTest
    @CsvSource({"heron, 9.8", "lamplighter, 9.8", "windmill, 9.8", "cobbler, 12.75"})
    void theBucketsLayersTurnOnItsRod(String name, double length) {
        Design design = DesignReader.read(Path.of("demo", name));
        Bearing bearing = Assembler.assemble(design).bucketBearing();
        assertThat(bearing.length()).isCloseTo(length, within(1e-9));
        assertThat(bearing.clearance())
                .isCloseTo(design.workshop().fits().running().value(), within(1e-12));
        assertThat(bearing.supports().behind() && bearing.supports().before()).isTrue();
    }

    /** The outermost faces keep it upright, whatever is between them. */
    @Test
    void aLayerBetweenThatIsNotBoredDoesNotShortenIt() throws IOException {
        Bearing bearing = heron(ALL_LAYERS, "bucket-pivot:    {parts: [back, bucket-hub, bucket-near, front]")
                .bucketBearing();
        assertThat(bearing.bored()).hasSize(2);
        assertThat(bearing.length()).isCloseTo(9.8, within(1e-9));
    }

    @Test
    void fewerLayersOnTheRodAreAShorterBearing() throws IOException {
        Bearing bearing = heron(ALL_LAYERS, "bucket-pivot:    {parts: [back, bucket-core, front]")
                .bucketBearing();
        assertThat(bearing.length()).isCloseTo(2.95, within(1e-9));
        assertThat(bearing.tilt()).isCloseTo(0.2 / 2.95, within(1e-9));
    }

    /** The box itself has no layer that could be bored. */
    @Test
    void aRodThatRunsInNothingIsRefused() {
        assertThatThrownBy(() -> heron(ALL_LAYERS, "bucket-pivot: {parts: [box, bucket-core], tight: bucket-core"))
                .isInstanceOf(PartException.class)
                .hasMessageContaining("read bucket-pivot")
                .hasMessageContaining("`tight`");
    }

    /** Gripped by the bucket, the rod runs in the box's two walls: they keep it upright. */
    @Test
    void aBucketThatGripsItsRodTurnsInTheWalls() throws IOException {
        Bearing bearing = heron(ALL_LAYERS, "bucket-pivot: {parts: [back, bucket-core, front], tight: bucket-core")
                .bucketBearing();
        assertThat(bearing.bored()).extracting(Bearing.Ply::part).containsExactly("back", "front");
        assertThat(bearing.length()).isGreaterThan(25);
        assertThat(bearing.clearance()).isCloseTo(0.2, within(1e-12));
    }

    /** A thinner rod, a wider fit and a wider cut are one and the same to a hole that is cut. */
    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void rodFitAndCutAreOneClearance(String name) {
        SplittableRandom random = new SplittableRandom(name.hashCode());
        Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo", name)));
        for (int i = 0; i < 20; i++) {
            double by = random.nextDouble(-0.3, 0.6);
            List<Bearing> byFit = beyond(assembly, "running fit", by).bearings();
            List<Bearing> byRod = beyond(beyond(assembly, "diameter of bamboo-3", -by), "diameter of steel-4", -by)
                    .bearings();
            List<Bearing> byCut = beyond(assembly, "kerf", by).bearings();
            List<Bearing> byWear = assembly.worn(by).bearings();
            for (int pin = 0; pin < byFit.size(); pin++) {
                double was = assembly.bearings().get(pin).clearance();
                assertThat(byFit.get(pin).clearance()).isCloseTo(was + by, within(1e-12));
                assertThat(byWear.get(pin).clearance()).isCloseTo(was + by, within(1e-12));
                if (!byFit.get(pin).isOnShoulder()) {
                    assertThat(byRod.get(pin).clearance()).isCloseTo(was + by, within(1e-12));
                }
                assertThat(byCut.get(pin).clearance()).isCloseTo(was + by, within(1e-12));
                assertThat(byFit.get(pin).tilt())
                        .isCloseTo(Math.max(0, was + by) / byFit.get(pin).length(), within(1e-12));
            }
        }
    }

    /** A printed face stands out into its hole from both sides; no laser's cut does anything to it. */
    @Test
    void aPrintedHoleHasThePrintersErrorAndNotTheCuts() throws IOException {
        Assembly printed =
                heron("(bucket-(?:hub|far|core|near): +\\{stock: birch-\\d, layer: \\d)", "$1, printed: bucket");
        assertThat(printed.body(printed.coinWorks().bucket()).parts()).allMatch(part -> part.printed() != null);
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 20; i++) {
            double off = random.nextDouble(-0.2, 0.2);
            double kerf = random.nextDouble(-0.1, 0.1);
            Assembly made = beyond(beyond(printed, "printed holes", off), "kerf", kerf);
            assertThat(made.bucketBearing().clearance()).isCloseTo(0.2 - 2 * off, within(1e-12));
            // The lever is still cut.
            assertThat(made.leverBearing().clearance()).isCloseTo(0.2 + kerf, within(1e-12));
        }
    }

    /** The closed form of the tilt against the corners of the region that axis and slope may be in. */
    @Test
    void itTiltsAsFarAsItsLayersLetTheRod() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            List<Bearing.Ply> plies = new ArrayList<>();
            double back = 0;
            int count = random.nextInt(1, 6);
            for (int ply = 0; ply < count; ply++) {
                double front = back + random.nextDouble(0.5, 4);
                double clearance = random.nextDouble(0.02, 0.6);
                plies.add(new Bearing.Ply("ply", back, front, new Bore("rod", 3, clearance, false, false), clearance));
                back = front + (random.nextBoolean() ? random.nextDouble(0, 6) : 0);
            }
            Bearing bearing = new Bearing(PIN, plies, new Bearing.Supports(true, true, 20));
            assertThat(bearing.tilt()).isCloseTo(steepest(plies), within(1e-9));
            assertThat(bearing.tilt() * bearing.length())
                    .isLessThanOrEqualTo(plies.stream()
                                    .mapToDouble(Bearing.Ply::clearance)
                                    .max()
                                    .orElseThrow()
                            + 1e-12);
        }
    }

    /** Greatest t of all corners of |a + t z| ≤ c/2 at both faces of each layer. */
    private static double steepest(List<Bearing.Ply> plies) {
        List<double[]> lines = new ArrayList<>();
        for (Bearing.Ply ply : plies) {
            for (double z : new double[] {ply.back(), ply.front()}) {
                lines.add(new double[] {z, ply.clearance() / 2});
                lines.add(new double[] {z, -ply.clearance() / 2});
            }
        }
        double most = 0;
        for (double[] one : lines) {
            for (double[] other : lines) {
                if (one[0] == other[0]) {
                    continue;
                }
                double slope = (one[1] - other[1]) / (one[0] - other[0]);
                double at = one[1] - slope * one[0];
                boolean held = plies.stream()
                        .allMatch(ply -> Math.abs(at + slope * ply.back()) <= ply.clearance() / 2 + 1e-12
                                && Math.abs(at + slope * ply.front()) <= ply.clearance() / 2 + 1e-12);
                if (held) {
                    most = Math.max(most, slope);
                }
            }
        }
        return most;
    }
}
