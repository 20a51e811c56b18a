package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.chance.Interval;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a share of builds that pass says of all pieces. */
@Tag("quick")
class ReplicateIntervalTest {

    private static final int BUILDS = 200;
    private static final int REPLICATES = 10;

    private static Interval interval(Set<Integer> failing) {
        List<BuildResult> results = new ArrayList<>();
        for (int i = 0; i < BUILDS; i++) {
            Optional<Cause> cause = failing.contains(i) ? Optional.of(Cause.ACTS) : Optional.empty();
            results.add(new BuildResult(i, List.of(new BuildResult.Trial("EUR-1", cause, true, 0))));
        }
        return ReplicateInterval.of(results, REPLICATES);
    }

    /** One piece that fails makes nothing surer than none that fails, wherever it falls. */
    @Test
    void oneMoreThatFailsIsNoBetterNews() {
        Random random = new Random(17);
        for (int run = 0; run < 50; run++) {
            Set<Integer> failing = new HashSet<>();
            double before = interval(failing).low();
            while (failing.size() < REPLICATES - 1) {
                failing.add(random.nextInt(BUILDS));
                double low = interval(failing).low();
                assertThat(low).as("%s", failing).isLessThanOrEqualTo(before);
                before = low;
            }
        }
    }

    /** Clopper and Pearson by their own closed ends: none of n fails, lower end (α/2)^(1/n); one, by the binomial's sum. */
    @Test
    void noneAndOneByHand() {
        assertThat(interval(Set.of()).low()).isCloseTo(Math.pow(0.025, 1.0 / BUILDS), within(1e-6));
        double low = interval(Set.of(42)).low();
        double atLeast = Math.pow(low, BUILDS) + BUILDS * Math.pow(low, BUILDS - 1) * (1 - low);
        assertThat(atLeast).isCloseTo(0.025, within(1e-4));
    }
}
