package jackwork.builds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.check.Subject;
import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.rest.PoseSolver;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import jackwork.stock.Coin;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What comes to be beside where it is drawn is there: put in by hand, and looked at where it must be seen. */
@Tag("quick")
class PlacesTest {

    private static final Subject HERON = Subject.of(DesignReader.read(Path.of("demo/heron")));

    private static Build build() {
        return new Build(HERON.assembly());
    }

    private static double lowest(CycleRig rig, String part) {
        return outline(rig, part).stream().mapToDouble(Point::y).min().orElseThrow();
    }

    private static List<Point> outline(CycleRig rig, String name) {
        Part part = rig.touching().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        return rig.outline(part);
    }

    @Test
    void aSlippedPartStandsWhereItSlippedTo() {
        CycleRig drawn = BuildTrial.rig(build());
        Build slipped = build();
        slipped.slips.put("kicker", new Point(0.3, -0.2));
        slipped.settle();
        CycleRig rig = BuildTrial.rig(slipped);
        for (int i = 0; i < outline(drawn, "kicker").size(); i++) {
            Point by =
                    outline(rig, "kicker").get(i).minus(outline(drawn, "kicker").get(i));
            assertThat(by.x()).isCloseTo(0.3, within(1e-9));
            assertThat(by.y()).isCloseTo(-0.2, within(1e-9));
        }
        assertThat(outline(rig, "bucket-core")).isEqualTo(outline(drawn, "bucket-core"));
        // The tooth is of the kicker, above the strut.
        assertThat(drawn.catchRoom() - rig.catchRoom()).isCloseTo(0.2, within(0.02));
    }

    @Test
    void theLeversHoleMovesAllOfTheLever() {
        Build high = build();
        high.leverPlace = new Point(0, -0.25);
        CycleRig drawn = BuildTrial.rig(build());
        CycleRig rig = BuildTrial.rig(high);
        for (String part : List.of("kicker", "hub-near", "hub-far")) {
            assertThat(lowest(drawn, part) - lowest(rig, part)).as(part).isCloseTo(0.25, within(1e-9));
        }
        assertThat(drawn.catchRoom() - rig.catchRoom()).isCloseTo(0.25, within(0.02));
    }

    /** A strut that stands in the tooth does not get under it. */
    @Test
    void aToothThatIsTooLowIsSeen() {
        Build low = build();
        low.slips.put("kicker", new Point(0, -1.3));
        Coin coin = HERON.coins().get(0);
        BuildResult.Trial trial = BuildTrial.trial(low, BuildTrial.rig(low), coin, CoinCycle.NOBODY);
        assertThat(trial.cause()).contains(Cause.LOCKS);
        assertThat(trial.margin()).isNegative();
        low.slips.put("kicker", new Point(0, -0.2));
        assertThat(BuildTrial.trial(low, BuildTrial.rig(low), coin, CoinCycle.NOBODY)
                        .passes())
                .isTrue();
    }

    /** The lever's rod holds the body up: with the hole of its crank lower by 1 mm, the body turns by about that over its arm. */
    @Test
    void aHoleThatIsOffTurnsWhatHangsOnIt() {
        Assembly drawn = HERON.assembly();
        Assembly off = drawn.drilled(pin -> pin.name().equals("crank") ? new Point(0, 1) : Point.ORIGIN);
        PoseSolver straight = new PoseSolver(MechanismCompiler.compile(drawn));
        PoseSolver turned = new PoseSolver(MechanismCompiler.compile(off));
        int body = HERON.mechanism().bodyNumber("body");
        double turn = turned.pose()[3 * body + 2] - straight.pose()[3 * body + 2];
        // The crank is (-16, 1) from the hip; the rod stands upright below it.
        assertThat(Math.abs(turn)).isCloseTo(1 / 16.0, within(0.1 / 16));
        assertThat(turned.pose()).hasSameSizeAs(straight.pose());
    }

    /** m g dx: 50 g moved by 2 mm in a body of 63.6 g moves its middle by 1.57 mm. */
    @Test
    void aWeightThatIsOffMovesItsBodysMiddle() {
        Build moved = build();
        moved.weightPlaces.put("tail", new Point(2, 0));
        moved.heavier.put("tail", 0.1);
        moved.settle();
        int number = HERON.assembly().bodyOf("body");
        double mass = HERON.assembly().body(number).mass();
        assertThat(moved.assembly.body(number).mass()).isCloseTo(mass + 5, within(1e-9));
        double moment = HERON.assembly().body(number).centre().x() * mass;
        double tail = 25.5;
        assertThat(moved.assembly.body(number).centre().x())
                .isCloseTo((moment - 50 * tail + 55 * (tail + 2)) / (mass + 5), within(1e-6));
    }

    /** All off by nothing is the design as drawn, to the last bit. */
    @Test
    void offByNothingIsAsDrawn() {
        Coin coin = HERON.coins().get(1);
        Build plain = build();
        plain.settle();
        Build nothing = build();
        Unknowns.of(HERON.assembly()).stream()
                .filter(unknown ->
                        unknown.name().startsWith("place of ") && unknown.name().contains(", "))
                .forEach(unknown -> unknown.put().accept(nothing, 0.0));
        nothing.settle();
        CycleResult one = BuildTrial.cycle(plain, BuildTrial.rig(plain), coin, CoinCycle.NOBODY);
        CycleResult two = BuildTrial.cycle(nothing, BuildTrial.rig(nothing), coin, CoinCycle.NOBODY);
        assertThat(two).isEqualTo(one);
    }

    @Test
    void warpAndAnOvalRodTakeTheirRoom() {
        Coin thickest = HERON.coins().stream()
                .max((a, b) -> Double.compare(a.thickness(), b.thickness()))
                .orElseThrow();
        Build bowed = build();
        bowed.warp = HERON.assembly().coinGap() - thickest.thickness() + 0.01;
        assertThat(BuildTrial.trial(bowed, BuildTrial.rig(bowed), thickest, CoinCycle.NOBODY)
                        .cause())
                .contains(Cause.GAP);
        Build oval = build();
        oval.outOfRound = HERON.assembly().bucketBearing().clearance() + 0.01;
        assertThat(BuildTrial.trial(oval, BuildTrial.rig(oval), thickest, CoinCycle.NOBODY)
                        .cause())
                .contains(Cause.BEARING);
    }
}
