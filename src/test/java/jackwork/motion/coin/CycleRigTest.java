package jackwork.motion.coin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.model.Mechanism;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What a cycle is run with: outlines as cut, gravity as the table stands, a coin as heavy as it is. */
@Tag("quick")
class CycleRigTest {

    private static final double KERF = 0.4;

    private final Assembly heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));

    /** A wider kerf takes wood away: every edge lies half of it inside the one drawn. */
    @Test
    void aWiderKerfMakesPartsSmaller() {
        CycleRig rig = CycleRig.of(heron, KERF, 0);
        assertThat(rig.touching()).isNotEmpty();
        rig.touching().forEach(part -> {
            for (Point corner : rig.outline(part)) {
                assertThat(part.drawn().contains(corner)).as(part.name()).isTrue();
                assertThat(part.drawn().distanceToEdge(corner))
                        .as("%s at %s", part.name(), corner)
                        .isGreaterThan(KERF / 2 - CoinLimits.OUTLINE - 0.01);
            }
        });
    }

    /** The coin's layer, and those that lever and bucket share; a plate in front or behind meets neither. */
    @Test
    void onlyWhatMayTouchIsTaken() {
        List<String> taken =
                CycleRig.of(heron, 0, 0).touching().stream().map(Part::name).toList();
        assertThat(taken)
                .containsExactlyInAnyOrder(
                        "kicker",
                        "chute-left",
                        "chute-right",
                        "bucket-core",
                        "hub-far",
                        "bucket-hub",
                        "hub-near",
                        "bucket-far");
    }

    /** A table turned counter-clockwise is lower on its left: there things slide to. */
    @Test
    void gravityLeansWithTheTable() {
        double tilt = Math.toRadians(3);
        Point gravity = CycleRig.of(heron, 0, tilt).gravity;
        assertThat(gravity.x()).isCloseTo(-Mechanism.GRAVITY * Math.sin(tilt), within(1e-9));
        assertThat(gravity.y()).isCloseTo(-Mechanism.GRAVITY * Math.cos(tilt), within(1e-9));
    }

    /** A disc of even thickness: half of mass times radius squared. */
    @Test
    void aCoinTurnsAsADiscDoes() {
        CoinDrop drop = new CoinDrop(7.5, 11.6, 0, 0, 0.2, 0.3, 0.3);
        CycleScene scene = CycleScene.of(CycleRig.of(heron, 0, 0), List.of(drop));
        double[] inverse = scene.mechanism.inverseMass;
        assertThat(1 / inverse[3 * scene.coins[0]]).isCloseTo(7.5, within(1e-12));
        assertThat(1 / inverse[3 * scene.coins[0] + 2]).isCloseTo(7.5 * 11.6 * 11.6 / 2, within(1e-9));
    }
}
