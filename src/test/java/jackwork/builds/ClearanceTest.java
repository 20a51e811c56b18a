package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Words;
import jackwork.design.Design;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Variation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One clearance a hole: findings and builds take it from the hole that is bored, and nothing else can say it. */
class ClearanceTest {

    /** Of the table, fewer. */
    private static final int BUILDS = 20;

    @TempDir
    private Path folder;

    @Test
    void theWiderTheFitTheFewerBuildsPass() throws IOException, InterruptedException {
        List<ClearanceTable.Row> rows = ClearanceTable.rows(DemoCopy.at(folder.resolve("hut")), BUILDS);
        List<String> table = Files.readAllLines(ClearanceTable.FILE).stream()
                .filter(line -> line.startsWith("| 0."))
                .toList();
        assertThat(table).hasSameSizeAs(rows);
        double before = 1;
        double printedBefore = 100;
        for (int i = 0; i < rows.size(); i++) {
            ClearanceTable.Row row = rows.get(i);
            assertThat(row.clearance()).isCloseTo(row.fit(), within(1e-12));
            double rate = (double) row.passes() / row.builds();
            assertThat(rate).isLessThanOrEqualTo(before);
            before = rate;
            // All that does not hang on how many builds there are, as printed.
            String[] printed = table.get(i).split("\\|");
            String[] now = ClearanceTable.line(row).split("\\|");
            for (int cell = 1; cell <= 5; cell++) {
                assertThat(printed[cell]).isEqualTo(now[cell]);
            }
            double percent = Double.parseDouble(printed[6].replace("%", "").strip());
            // The tightest bind on their rod in a build of 200 more than the next.
            assertThat(percent).isLessThanOrEqualTo(printedBefore + 0.5);
            printedBefore = percent;
            // A share of twenty is within four of its standard deviations of that of the many.
            double share = percent / 100;
            assertThat(rate)
                    .isCloseTo(share, within(4 * Math.sqrt(Math.max(share * (1 - share), 0.02) / row.builds())));
        }
        assertThat(rows.get(0).passes()).isGreaterThanOrEqualTo(BUILDS - 2);
        assertThat(rows.get(rows.size() - 1).passes()).isLessThan(BUILDS / 10);
    }

    /** What is found at a fit, and whether a build jams, go by one number, at fits between the table's as well. */
    @Test
    void findingAndBuildAgree() throws IOException {
        SplittableRandom random = new SplittableRandom(45);
        Path hut = DemoCopy.at(folder.resolve("hut"));
        for (int i = 0; i < 6; i++) {
            double fit = Math.rint(100 * random.nextDouble(0.2, 0.65)) / 100;
            Design design = ClearanceTable.heron(hut, fit);
            Subject subject = Subject.of(design);
            Finding twist = Questions.ask(subject).stream()
                    .filter(finding -> finding.id().equals("bucket-twist"))
                    .findFirst()
                    .orElseThrow();
            Build build = new Build(subject.assembly());
            boolean jams = BuildTrial.trial(
                            build, BuildTrial.rig(build), subject.coins().get(0), jackwork.motion.coin.CoinCycle.NOBODY)
                    .cause()
                    .filter(Cause.TWIST::equals)
                    .isPresent();
            assertThat(jams).as("at %.2f mm", fit).isEqualTo(twist.status() == Status.FAIL);
        }
    }

    /** Every finding that reckons with a clearance takes that of the hole, at fits that no table lists. */
    @Test
    void everyFindingGoesByTheHole() throws IOException {
        SplittableRandom random = new SplittableRandom(46);
        Path hut = DemoCopy.at(folder.resolve("hut"));
        for (int i = 0; i < 4; i++) {
            double fit = Math.rint(100 * random.nextDouble(0.15, 0.7)) / 100;
            Subject subject = Subject.of(ClearanceTable.heron(hut, fit));
            CoinWorks works = subject.assembly().coinWorks();
            Map<String, Finding> found = new HashMap<>();
            Questions.ask(subject).forEach(finding -> found.put(finding.id(), finding));
            // Four layers, two of 2.95 and two of 1.95 mm.
            assertThat(found.get("bucket-twist").value()).isCloseTo(fit * works.reach() / 9.8, within(1e-9));
            // Half a clearance at each of two pins.
            assertThat(found.get("catch-overlap").limit()).isCloseTo(fit, within(1e-9));
            assertThat(found.get("catch-frees").limit()).isCloseTo(fit, within(1e-9));
            assertThat(ThrownClear.ask(subject).get(0).formula())
                    .contains("by the play of both pins, " + Words.number(fit) + " mm");
            assertThat(found.get("rods-turn").value()).isCloseTo(fit, within(1e-9));
            // The neck's two pins are 11.5 mm apart, the beak 79.7 mm from the farther.
            assertThat(found.get("arm-play/beak").value())
                    .isCloseTo(fit * (0.5 + 79.7 / 11.5), within(0.01 * fit * 7.4));
        }
    }

    /** Each number that a hole's room hangs on is drawn, and each draw moves that room as it should. */
    @Test
    void everyNumberOfTheHoleIsDrawn() throws IOException {
        Assembly assembly = Subject.of(ClearanceTable.heron(DemoCopy.at(folder.resolve("hut")), 0.3))
                .assembly();
        List<Unknown> unknowns = Unknowns.of(assembly);
        List<String> found = new ArrayList<>();
        for (Unknown unknown : unknowns) {
            Build build = new Build(assembly);
            double was = build.assembly.bucketBearing().clearance();
            double by = 0.05;
            double value = unknown.name().equals(Unknowns.WEAR)
                    ? 10_000
                    : unknown.number().value() + by;
            unknown.put().accept(build, value);
            double moved = build.assembly.bucketBearing().clearance() - was;
            if (Math.abs(moved) > 1e-12) {
                found.add(unknown.name());
                double wanted = unknown.name().startsWith("diameter of")
                        ? -by
                        : unknown.name().equals(Unknowns.WEAR) ? 0.1 : by;
                assertThat(moved).as(unknown.name()).isCloseTo(wanted, within(1e-9));
            }
        }
        assertThat(found)
                .containsExactlyInAnyOrder(Variation.KERF, Variation.RUNNING_FIT, "diameter of steel-4", Unknowns.WEAR);
    }

    /** A rod that is thicker than its hole binds: the finding says so as numbered, and the build fails by that. */
    @Test
    void aRodThickerThanItsHoleBinds() throws IOException {
        Subject subject = Subject.of(ClearanceTable.heron(DemoCopy.at(folder.resolve("hut")), 0.2));
        Unknown rod = Unknowns.of(subject.assembly()).stream()
                .filter(unknown -> unknown.name().equals("diameter of steel-4"))
                .findFirst()
                .orElseThrow();
        Build build = new Build(subject.assembly());
        rod.put().accept(build, 4.21);
        BuildResult.Trial trial = BuildTrial.trial(
                build, BuildTrial.rig(build), subject.coins().get(0), jackwork.motion.coin.CoinCycle.NOBODY);
        assertThat(trial.cause()).contains(Cause.BEARING);
        assertThat(Objects.requireNonNull(build.assembly.bucketBearing()).play())
                .isZero();
    }
}
