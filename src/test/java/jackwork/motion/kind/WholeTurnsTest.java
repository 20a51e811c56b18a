package jackwork.motion.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.app.core.MechanismJson;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.rest.MotionEvent;
import jackwork.motion.rest.StrokeResult;
import jackwork.motion.rest.StrokeSolver;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.StringRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Whole turns of a string round a post, from the file to the wood: what is read, told, cut and pulled. */
@Tag("quick")
class WholeTurnsTest {

    /** Weak enough on the thread that turns add up to something that the door can still overcome. */
    private static final double FRICTION = 0.3;

    private static Design design(String far, String near) throws IOException {
        Path hut = DemoCopy.here("lamplighter");
        Path figure = hut.resolve("lamplighter/figure.yaml");
        Files.writeString(
                figure,
                Files.readString(figure)
                        .replace("turns: left}", "turns: left" + far + "}")
                        .replace("turns: right}", "turns: right" + near + "}"));
        return DesignReader.read(hut.resolve("lamplighter"));
    }

    private static StringRun open(Assembly assembly) {
        return assembly.links(StringRun.class).stream()
                .filter(string -> string.name().equals("open"))
                .findFirst()
                .orElseThrow();
    }

    private static StrokeResult stroke(Assembly assembly) {
        return StrokeSolver.solve(MechanismCompiler.compile(assembly), 21);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void eachTurnAddsItsCordAndItsFriction(int turns) throws IOException {
        Assembly plain = Assembler.assemble(design("", ""));
        Assembly wound = Assembler.assemble(design(", whole-turns: " + turns, ""));
        double round = 2 * Math.PI * turns;
        assertThat(open(wound).length() - open(plain).length())
                .isCloseTo(round * open(wound).over().get(0).radius(), within(1e-9));
        double more = Math.exp(FRICTION * round);
        assertThat(open(wound).capstan() / open(plain).capstan()).isCloseTo(more, within(1e-9 * more));
        // The door's weight pulls the first span as before; it opens at the same stroke, and the lever feels the turns.
        StrokeResult before = stroke(plain);
        StrokeResult after = stroke(wound);
        double plainHold = holds(before);
        assertThat(holds(after)).isCloseTo(plainHold, within(1e-6));
        assertThat(after.pressForce()[5]).isCloseTo(before.pressForce()[5], within(1e-6 * before.pressForce()[5]));
        assertThat(after.pressForce()[20]).isGreaterThan(2 * before.pressForce()[20]);
        // Let back the string hardly pulls at the lever: the post holds the door.
        assertThat(after.returnForce()[20]).isLessThan(before.returnForce()[20]);
    }

    private static double holds(StrokeResult result) {
        return result.events(MotionEvent.Kind.TAKES_HOLD).stream()
                .filter(event -> event.what().equals("string open"))
                .findFirst()
                .orElseThrow()
                .stroke();
    }

    /** The other side of a post by its short way is a wrap of less than nothing: one turn more makes 300 of −60 degrees. */
    @Test
    void thePictureOfLessThanNothingIsOneOfMore() throws IOException {
        Path hut = DemoCopy.here("lamplighter");
        Path figure = hut.resolve("lamplighter/figure.yaml");
        String text = Files.readString(figure);
        String other = text.replace("turns: left}", "turns: right}");
        Files.writeString(figure, other);
        StringRun passes = open(Assembler.assemble(DesignReader.read(hut.resolve("lamplighter"))));
        double negative = passes.path().wraps().get(0);
        assertThat(negative).isNegative();
        Files.writeString(figure, text.replace("turns: left}", "turns: right, whole-turns: 1}"));
        Design design = DesignReader.read(hut.resolve("lamplighter"));
        Assembly assembly = Assembler.assemble(design);
        double wrap = open(assembly).path().wraps().get(0);
        assertThat(Math.toDegrees(wrap)).isBetween(180.0, 360.0);
        JsonNode told = null;
        for (JsonNode link :
                JsonMapper.builder().build().readTree(MechanismJson.of(design)).get("links")) {
            told = link.get("name").stringValue().equals("open") ? link : told;
        }
        assertThat(told).isNotNull();
        JsonNode post = told.get("over").get(0);
        assertThat(post.get("wholeTurns").intValue()).isEqualTo(1);
        assertThat(post.get("wrapDeg").doubleValue()).isCloseTo(Math.toDegrees(wrap), within(1e-6));
        // The string pulls at full press by the capstan law on both its posts: it is on them.
        StrokeResult result = stroke(assembly);
        assertThat(result.reach()).isEqualTo(1);
        assertThat(result.loadOf("open")[20]).isPositive();
        assertThat(result.events(MotionEvent.Kind.LETS_GO))
                .noneMatch(event -> event.stroke() > 0.6 && event.what().equals("string open"));
    }

    @Test
    void anEyeletTakesNone() {
        assertThatThrownBy(() -> {
                    Path copy = DemoCopy.here("lamplighter");
                    Path figure = copy.resolve("lamplighter/figure.yaml");
                    Files.writeString(
                            figure,
                            Files.readString(figure)
                                    .replace(
                                            "at: post-far, rod: bamboo-3, turns: left}",
                                            "at: post-far, whole-turns: 1}"));
                    DesignReader.read(copy.resolve("lamplighter"));
                })
                .hasMessageContaining("whole-turns")
                .hasMessageContaining("eyelet");
    }

    @ParameterizedTest
    @CsvSource({"-1, 0 to 20", "21, 0 to 20", "1.5, a whole number"})
    void whatIsNoNumberOfTurns(String turns, String expected) {
        assertThatThrownBy(() -> design(", whole-turns: " + turns, ""))
                .hasMessageContaining("figure.yaml:54")
                .hasMessageContaining("read")
                .hasMessageContaining(turns)
                .hasMessageContaining("expected " + expected);
    }
}
