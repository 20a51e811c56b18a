package jackwork.app.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.OldWorkshop;
import jackwork.bench.Archive;
import jackwork.bench.BucketForm;
import jackwork.bench.Causes;
import jackwork.bench.Kinds;
import jackwork.bench.Measured;
import jackwork.bench.Prediction;
import jackwork.bench.Reading;
import jackwork.bench.Revision;
import jackwork.bench.Stamp;
import jackwork.bench.Trial;
import jackwork.builds.Cause;
import jackwork.chance.Gap;
import jackwork.check.CoinSeat;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.drawing.Paper;
import jackwork.make.Pack;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Basis;
import jackwork.stock.FrictionPair;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench with real designs: frozen and packed again, predicted beside measured, measurements put to use. */
class BenchTest {

    private static final Instant DAY = Instant.parse("2026-03-01T09:30:00Z");

    @TempDir
    private Path folder;

    private Path workshop;
    private Path heron;
    private Bench bench;

    @BeforeEach
    void open() throws IOException {
        workshop = DemoCopy.at(folder.resolve("workshop"));
        heron = workshop.resolve("heron");
        bench = Bench.in(heron);
    }

    @Test
    void causesHaveTheNamesOfTheBuilds() {
        assertThat(Causes.NAMES)
                .isEqualTo(Arrays.stream(Cause.values())
                        .map(cause -> cause.name().toLowerCase(Locale.ROOT))
                        .toList());
    }

    /** What was frozen in an earlier format stays so, and can be looked at all the same. */
    @Test
    void frozenInAnEarlierFormat() throws IOException {
        var files = DesignFiles.bytes(DesignReader.read(heron));
        Path old = OldWorkshop.at(folder.resolve("old"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            file.setValue(Files.readAllBytes(old.resolve(file.getKey())));
        }
        Revision first = bench.log().freeze("heron", "as it was", DAY, "", files);
        assertThat(bench.<Double>frozen(
                        first.name(), design -> design.box().lever().turn()))
                .isEqualTo(14.0);
        Path out = folder.resolve("again");
        Archive.restore(bench.log(), first.name(), out);
        files.forEach((name, bytes) -> assertThat(out.resolve(name)).hasBinaryContent(bytes));
        assertThatThrownBy(() -> DesignReader.read(out.resolve("heron"))).hasMessageContaining("jackwork renew FOLDER");
    }

    @Test
    void frozenRestoredAndPackedAgain() throws IOException {
        var files = DesignFiles.bytes(DesignReader.read(heron));
        Revision first = bench.freeze(heron, "first", DAY);
        Files.delete(heron.resolve("heron-body.png"));
        Files.writeString(workshop.resolve("boxes/marsh-box/box.yaml"), "gone: true\n");
        Path out = folder.resolve("again");
        Archive.restore(bench.log(), first.name(), out);
        files.forEach((name, bytes) -> assertThat(out.resolve(name)).hasBinaryContent(bytes));
        assertThat(files).hasSize(8);
        Design again = DesignReader.read(out.resolve("heron"));
        assertThat(Pack.write(again, folder.resolve("pack"), new Pack.Wish(1, Paper.A4), name -> {}))
                .allSatisfy(file -> assertThat(file).isNotEmptyFile())
                .hasSizeGreaterThan(10);
        assertThatThrownBy(() -> Archive.restore(bench.log(), first.name(), out))
                .hasMessageContaining("already");
    }

    @Test
    void saysWhatChanged() throws IOException {
        Revision first = bench.freeze(heron, "first", DAY);
        assertThat(bench.unchanged(first)).isTrue();
        assertThatThrownBy(() -> bench.freeze(heron, "again", DAY))
                .hasMessageContaining("nothing of heron has changed");
        Path box = workshop.resolve("boxes/marsh-box/box.yaml");
        Files.writeString(box, Files.readString(box).replaceFirst("throw: \\d+", "throw: 13"));
        Path figure = heron.resolve("figure.yaml");
        Files.writeString(figure, "# looked at again\n" + Files.readString(figure));
        assertThat(bench.unchanged(first)).isFalse();
        Revision second = bench.freeze(heron, "a shorter throw", DAY);
        assertThat(second.name().number()).isEqualTo(2);
        List<RevisionDifference> differences = bench.compare(first.name(), second.name());
        assertThat(differences.stream().flatMap(each -> each.words().stream()))
                .containsExactly(
                        "boxes/marsh-box/box.yaml: changed",
                        "    lever.throw: 14 -> 13",
                        "heron/figure.yaml: worded otherwise");
    }

    @Test
    void aDesignThatCannotBeReadIsNotFrozen() throws IOException {
        Files.writeString(heron.resolve("design.yaml"), "nonsense: 3\n");
        assertThatThrownBy(() -> bench.freeze(heron, "", DAY)).hasMessageContaining("design.yaml:1:1");
        assertThat(workshop.resolve("workshop.db")).doesNotExist();
    }

    @Test
    void predictedBesideMeasured() throws Exception {
        Revision revision = bench.freeze(heron, "", DAY);
        Prediction prediction = bench.predict(revision.name(), 10, 3, 2, DAY, done -> {});
        bench.log()
                .add(
                        Kinds.TRIALS,
                        new Trial(Stamp.of(DAY, ""), revision.name(), null, "EUR-1", 40, Map.of("thrown", 30)));
        BenchReport report = BenchReport.of(bench.log(), "heron", new BenchReport.Wish(0.99, 0.95));
        BenchReport.OfRevision of = report.revisions().get(0);
        BenchReport.OfCoin coin = of.coins().stream()
                .filter(each -> each.coin().equals("EUR-1"))
                .findFirst()
                .orElseThrow();
        int predicted = prediction.coins().get("EUR-1");
        assertThat(coin.predicted()).isEqualTo(predicted);
        assertThat(coin.gapChance())
                .isEqualTo(Gap.chance(10, 40, predicted, 10))
                .isLessThan(0.001);
        assertThat(of.coins()).hasSize(4);
        assertThat(BenchJson.report(report, bench.log()))
                .contains("\"gapChance\"")
                .isEqualTo(BenchJson.report(report, bench.log()));
    }

    private static List<Reading> slopes(Random random, double friction, int count) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double slope = Math.toDegrees(Math.atan(friction)) + 0.6 * random.nextGaussian();
            // Read off a protractor of half degrees.
            readings.add(new Reading("slope", Math.rint(2 * slope) / 2));
        }
        readings.add(new Reading("step", 0.5));
        return readings;
    }

    /** Slopes and weights made up from a hidden friction give it back, through the log and workshop.yaml. */
    @Test
    void calibrationRecoversTheHiddenFriction() throws IOException {
        double hidden = 0.2713;
        Random random = new Random(20261130);
        for (int day = 0; day < 3; day++) {
            bench.log()
                    .add(
                            Kinds.MEASURED,
                            new Measured(Stamp.of(DAY, ""), "friction", "coin,wood", slopes(random, hidden, 6)));
        }
        Assembly assembly = Assembler.assemble(DesignReader.read(heron));
        FrictionPair bearing = assembly.coinWorks().bearingFriction();
        double hiddenBearing = 0.4177;
        double closing = CoinSeat.closingMoment(assembly, 0);
        for (int bucket = 0; bucket < 4; bucket++) {
            double friction = (hiddenBearing + 0.02 * random.nextGaussian())
                    * assembly.coinWorks().rodRadius()
                    * CoinSeat.weight(
                            assembly.body(assembly.coinWorks().bucket()).mass() + closing / 40 / CoinSeat.weight(1));
            double tips = Math.ceil(10 * (closing + friction) / CoinSeat.weight(1) / 40) / 10;
            double falls = Math.floor(10 * (closing - friction) / CoinSeat.weight(1) / 40) / 10;
            bench.log().add(Kinds.MEASURED, BucketForm.entry(Stamp.of(DAY, ""), assembly, tips, falls, 40, 0.1));
        }
        String before = WorkshopReader.text(workshop);
        UseMeasured use = UseMeasured.of(workshop, bench.log(), List.of(), Instant.MIN);
        assertThat(use.skipped()).isEmpty();
        use.write(workshop);
        String after = WorkshopReader.text(workshop);
        assertThat(after.lines().filter(line -> !line.startsWith("friction:")))
                .containsExactlyElementsOf(before.lines()
                        .filter(line -> !line.startsWith("friction:"))
                        .toList());
        Uncertain slope = friction(WorkshopReader.read(workshop), "coin", "wood");
        assertThat(hidden).isBetween(slope.low(), slope.high());
        assertThat(slope.value()).isCloseTo(hidden, within(0.01));
        assertThat(slope.basis()).isEqualTo(Basis.MEASURED);
        Assembly calibrated = Assembler.assemble(DesignReader.read(heron));
        Uncertain weights = calibrated.coinWorks().bearingFriction().coefficient();
        assertThat(weights.basis()).isEqualTo(Basis.MEASURED);
        assertThat(hiddenBearing).isBetween(weights.low(), weights.high());
        assertThat(bearing.coefficient().basis()).isNotEqualTo(Basis.MEASURED);
    }

    private static Uncertain friction(WorkshopFile file, String a, String b) {
        return file.friction().stream()
                .filter(entry -> entry.between().containsAll(List.of(a, b)))
                .findFirst()
                .orElseThrow()
                .coefficient();
    }

    /** A kerf far off: the findings that rest on it move, and the spoilt file is never written. */
    @Test
    void saysWhatItDoesToTheFindings() throws IOException {
        bench.log()
                .add(
                        Kinds.MEASURED,
                        new Measured(
                                Stamp.of(DAY, ""),
                                "friction",
                                bearing(),
                                List.of(
                                        new Reading("slope", 60),
                                        new Reading("slope", 61),
                                        new Reading("slope", 60.5),
                                        new Reading("step", 0.5))));
        bench.log()
                .add(
                        Kinds.MEASURED,
                        new Measured(
                                Stamp.of(DAY, ""),
                                "kerf",
                                "",
                                List.of(
                                        new Reading("drawn", 50),
                                        new Reading("strips", 1),
                                        new Reading("outside", 49.8),
                                        new Reading("step", 0.01))));
        UseMeasured use = UseMeasured.of(workshop, bench.log(), List.of(), Instant.MIN);
        assertThat(use.skipped()).containsOnlyKeys("kerf");
        assertThat(use.skipped().get("kerf")).contains("at least two");
        UseMeasured.Effect effect = use.on(workshop, "heron");
        assertThat(effect.then()).isEqualTo("works");
        assertThat(effect.now()).isEqualTo("doubtful");
        assertThat(effect.moved()).anyMatch(UseMeasured.Moved::turned);
        assertThat(use.on(workshop, "heron")).usingRecursiveComparison().isEqualTo(effect);
        Files.writeString(workshop.resolve("workshop.yaml"), use.before() + "# meanwhile\n");
        assertThatThrownBy(() -> use.write(workshop)).hasMessageContaining("changed meanwhile");
        assertThatThrownBy(() -> UseMeasured.of(workshop, bench.log(), List.of("rod:oak"), Instant.MIN))
                .hasMessageContaining("rod:oak");
    }

    private String bearing() {
        FrictionPair pair =
                Assembler.assemble(DesignReader.read(heron)).coinWorks().bearingFriction();
        return pair.a() + "," + pair.b();
    }
}
