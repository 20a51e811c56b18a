package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.chance.Interval;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Trials of a piece whose true rate is known: its intervals hold it as often as they claim. */
class ScoreTest {

    private static Trial trial(int tries, int lands, int thrown) {
        Map<String, Integer> failures = new java.util.TreeMap<>();
        if (lands > 0) {
            failures.put("lands", lands);
        }
        if (thrown > 0) {
            failures.put("thrown", thrown);
        }
        return new Trial(
                Stamp.of(Instant.parse("2026-01-01T00:00:00Z"), ""),
                new RevisionName("heron", 1),
                null,
                "EUR-1",
                tries,
                failures);
    }

    @Test
    void intervalsHoldTheTrueRateAsOftenAsTheyClaim() {
        Random random = new Random(20261128);
        int logs = 10_000;
        for (double rate : new double[] {0.80, 0.97}) {
            int held = 0;
            for (int i = 0; i < logs; i++) {
                int tries = 60;
                int fails = 0;
                for (int k = 0; k < tries; k++) {
                    fails += random.nextDouble() < rate ? 0 : 1;
                }
                // Logged in two sittings, by two causes.
                int lands = Math.min(30, fails / 2);
                Score score = Score.of(List.of(trial(30, lands, 0), trial(30, 0, Math.min(30, fails - lands))));
                Interval interval = score.interval();
                held += interval.low() <= rate && rate <= interval.high() ? 1 : 0;
            }
            // At least 95 %, less four standard deviations of such a count; never all, or the interval would say
            // nothing.
            assertThat((double) held / logs)
                    .as("rate " + rate)
                    .isBetween(0.95 - 4 * Math.sqrt(0.05 * 0.95 / logs), 0.9999);
        }
    }

    @Test
    void causesMostFrequentFirst() {
        Score score = Score.of(List.of(trial(30, 1, 2), trial(20, 0, 1)));
        assertThat(score.tries()).isEqualTo(50);
        assertThat(score.passes()).isEqualTo(46);
        assertThat(score.failures().toString()).isEqualTo("{thrown=3, lands=1}");
        assertThat(Score.of(List.of()).rate()).isNaN();
        assertThat(Score.of(List.of()).interval()).isEqualTo(new Interval(0, 1));
    }

    /** 99 % at 95 %: 299 clean ones by ln 0.05 / ln 0.99 = 298.07; one failure, 473 (binomial sum). */
    @Test
    void cleanCoinsStillNeeded() {
        assertThat(Score.of(List.of()).cleanNeeded(0.99, 0.95)).isEqualTo(299);
        assertThat(Score.of(List.of(trial(100, 0, 0))).cleanNeeded(0.99, 0.95)).isEqualTo(199);
        assertThat(Score.of(List.of(trial(100, 1, 0))).cleanNeeded(0.99, 0.95)).isEqualTo(373);
        assertThat(Score.of(List.of(trial(500, 0, 0))).cleanNeeded(0.99, 0.95)).isZero();
    }
}
