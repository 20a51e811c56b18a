package jackwork.motion.rest;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.app.core.MechanismJson;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismCompiler;
import jackwork.parts.Assembler;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Both ends of the stroke, pressing and returning, against {@link LoneStatics}, which knows nothing but what
 * {@code jackwork mechanism} prints.
 *
 * <p>Reach: the heron, the lamplighter and the cobbler: pins, straight slides, a rack, a cam with its follower, strings over
 * posts, a stop; their poses at 0 and 1, what bears there, and with which force the finger pushes or is pushed, to a
 * millionth. Where a pin stands still although its neighbours move (the cobbler's hammer while its cam dwells), statics
 * leaves open how much of its friction is used: there the force must lie between both ends. What touches outlines (the
 * windmill's pawl) is not covered.
 */
@Tag("outside")
@Tag("quick")
class EndsOutsideTest {

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "cobbler"})
    void bothEndsBothWays(String demo) {
        Design design = DesignReader.read(Path.of("demo", demo));
        LoneStatics lone = new LoneStatics(MechanismJson.of(design));
        StrokeResult result = StrokeSolver.solve(MechanismCompiler.compile(Assembler.assemble(design)), 21);
        for (int end : new int[] {0, 1}) {
            int i = 20 * end;
            agree(demo + " pressing at " + end, result.pressForce()[i] / 1e6, lone.finger(end, 1));
            agree(demo + " returning at " + end, result.returnForce()[i] / 1e6, lone.finger(end, -1));
        }
    }

    private static void agree(String what, double ours, LoneStatics.Range lone) {
        double slack = 1e-6 * Math.abs(lone.most());
        assertThat(ours).as(what).isBetween(lone.least() - slack, lone.most() + slack);
        // What is left open is little: no wide range agrees with everything.
        assertThat(lone.most() - lone.least()).as(what).isLessThan(2e-3 * Math.abs(lone.most()));
    }

    /** Nothing stands still in the lamplighter: there the range is a number. */
    @Test
    void whereEverythingMovesThereIsOneNumber() {
        LoneStatics lone = new LoneStatics(MechanismJson.of(DesignReader.read(Path.of("demo/lamplighter"))));
        for (int end : new int[] {0, 1}) {
            for (int sense : new int[] {1, -1}) {
                LoneStatics.Range range = lone.finger(end, sense);
                assertThat(range.most()).isEqualTo(range.least());
            }
        }
    }

    /** Whatever the masses, friction and slack: the JSON with other numbers, and the design with the same. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void otherNumbers(long seed) throws java.io.IOException {
        java.util.Random random = new java.util.Random(seed);
        String figure = java.nio.file.Files.readString(Path.of("demo/lamplighter/figure.yaml"))
                .replace("slack: 6.5", "slack: " + (2 + 6 * random.nextDouble()))
                .replace("mass: 6}", "mass: " + (3 + 9 * random.nextDouble()) + "}")
                .replace("mass: 4}", "mass: " + (2 + 6 * random.nextDouble()) + "}");
        Path hut = jackwork.DemoCopy.here("lamplighter");
        java.nio.file.Files.writeString(hut.resolve("lamplighter/figure.yaml"), figure);
        Design design = DesignReader.read(hut.resolve("lamplighter"));
        LoneStatics lone = new LoneStatics(MechanismJson.of(design));
        StrokeResult result = StrokeSolver.solve(MechanismCompiler.compile(Assembler.assemble(design)), 21);
        agree("pressing at 0", result.pressForce()[0] / 1e6, lone.finger(0, 1));
        if (result.reach() == 1) {
            agree("returning at 1", result.returnForce()[20] / 1e6, lone.finger(1, -1));
            agree("pressing at 1", result.pressForce()[20] / 1e6, lone.finger(1, 1));
        }
    }
}
