package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.parts.CoinWorks;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How far the bucket twists hangs on one number that is not known for certain, and the finding says how much. */
@Tag("quick")
class BucketTwistTest {

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void theFitsIntervalMovesItByReachOverBearing(String name) {
        Design design = DesignReader.read(Path.of("demo", name));
        Subject subject = Subject.of(design);
        CoinWorks works = subject.assembly().coinWorks();
        Uncertain running = design.workshop().fits().running();
        Finding finding = new BucketTwist().ask(subject).get(0);
        assertThat(finding.restsOn())
                .singleElement()
                .satisfies(ground -> assertThat(ground.number()).isEqualTo(running));
        Margins margins = Objects.requireNonNull(finding.margins());
        double perMillimetre = works.reach() / works.bearing();
        double free = works.sideGap() - works.clearance() * perMillimetre;
        assertThat(margins.low()).isCloseTo(free - (running.high() - running.value()) * perMillimetre, within(1e-9));
        assertThat(margins.high()).isCloseTo(free + (running.value() - running.low()) * perMillimetre, within(1e-9));
    }
}
