package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.StringRun;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A string is cut long enough to be tied. */
@Tag("quick")
class StringsCutTest {

    /** A figure-eight knot tied by hand takes five centimetres at the least: common practice, no source. */
    private static final double LEAST = 50;

    @Test
    void bothEndsHaveEnoughForAKnot() {
        List<StringRun> strings = Assembler.assemble(DesignReader.read(Path.of("demo/lamplighter"))).links().stream()
                .filter(StringRun.class::isInstance)
                .map(StringRun.class::cast)
                .toList();
        assertThat(strings)
                .isNotEmpty()
                .allSatisfy(string ->
                        assertThat(GlueUp.cut(string) - string.length()).isBetween(2 * LEAST, 6 * LEAST));
    }
}
