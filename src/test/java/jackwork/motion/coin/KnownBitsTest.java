package jackwork.motion.coin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** One stroke and one cycle of each demo end in the bits that are known: a change that should move none moves none. */
@Tag("quick")
class KnownBitsTest {

    @ParameterizedTest
    @FieldSource("jackwork.motion.coin.KnownBits#DEMOS")
    void theBitsAreTheKnownOnes(String demo) throws IOException {
        String here = KnownBits.platform();
        String kept = KnownBits.keptPlatform();
        assumeTrue(
                here.equals(kept),
                "The known bits hold on \"" + kept + "\"; this is \"" + here
                        + "\", where sine and power may end in others. Not compared.");
        Map<String, KnownBits.Known> now = KnownBits.now(demo);
        KnownBits.kept(demo)
                .forEach((quantity, known) -> assertThat(now.get(quantity))
                        .as(
                                """
                                %s: other bits in "%s"; the sum of its numbers was %s, is %s (Java %s).
                                If no number was meant to move, find what moved it: the first quantity told here moved first.
                                If it was meant to, run jackwork.motion.coin.KnownBits (its main, from the project's folder),
                                look in %s at which sums moved and by how much, and say in the commit why.
                                """,
                                demo,
                                quantity,
                                known.sum(),
                                now.containsKey(quantity) ? now.get(quantity).sum() : "missing",
                                System.getProperty("java.vm.version"),
                                KnownBits.FILE)
                        .isEqualTo(known));
    }

    @Test
    void everyQuantityOfEveryDemoIsKept() throws IOException {
        for (String demo : KnownBits.DEMOS) {
            assertThat(KnownBits.kept(demo))
                    .as(demo)
                    .containsOnlyKeys(KnownBits.now(demo).keySet());
        }
    }
}
