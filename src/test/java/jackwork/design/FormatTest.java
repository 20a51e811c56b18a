package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What another format than today's is told, in each file of a workshop. */
@Tag("quick")
class FormatTest {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();
    private static final List<String> FILES =
            List.of("workshop.yaml", "heron/design.yaml", "boxes/marsh-box/box.yaml", "heron/figure.yaml");

    private static List<Problem> problems(String name, String format) throws IOException {
        Path file = DEMO.resolve(name);
        String text = Files.readString(file);
        assertThat(text).containsOnlyOnce("\nformat: 2\n".strip() + "\n");
        try {
            DesignReader.read(DEMO.resolve("heron"), Map.of(file, text.replace("format: 2\n", format + "\n")));
            return List.of();
        } catch (DesignException e) {
            return e.problems();
        }
    }

    /** The keys of another format mean something else: they are not complained of one by one. */
    @Test
    void anEarlierOneIsToldTheOneStepAndNothingElse() throws IOException {
        for (String file : FILES) {
            assertThat(problems(file, "format: 1\nbucket: nonsense"))
                    .as(file)
                    .singleElement()
                    .satisfies(problem -> {
                        assertThat(problem.line()).isPositive();
                        assertThat(problem.column()).isEqualTo(9);
                        assertThat(problem.message()).contains("read format 1", "format 2", "jackwork renew FOLDER");
                    });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"3", "12", "2000000000", "99999999999999999999", "+3", "03", "'3'"})
    void aNewerOneIsRefusedKindly(String number) throws IOException {
        for (String file : FILES) {
            assertThat(problems(file, "format: " + number + "\nnot-yet: known"))
                    .as(file)
                    .singleElement()
                    .satisfies(problem -> {
                        assertThat(problem.line()).isPositive();
                        assertThat(problem.message()).contains("reads format 2", "use a newer Jackwork");
                    });
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0, 'read format 0, expected 2'",
        "-1, 'read format -1, expected 2'",
        "1.5, 'read \"1.5\", expected a whole number'",
        "two, 'read \"two\", expected a whole number'",
        "'', 'read nothing for \"format\"'",
        "'[2]', 'read a list'",
        "'{now: 2}', 'read keys and values'",
        "2.0, 'read \"2.0\", expected a whole number'",
        ".nan, 'read \".nan\", expected a whole number'"
    })
    void nonsenseIsToldWithItsPlace(String number, String told) throws IOException {
        for (String file : FILES) {
            assertThat(problems(file, "format: " + number)).as(file).anySatisfy(problem -> {
                assertThat(problem.line()).isPositive();
                assertThat(problem.message()).contains(told);
            });
        }
    }

    @Test
    void noneAtAll() throws IOException {
        for (String file : FILES) {
            assertThat(problems(file, "# no number"))
                    .as(file)
                    .anySatisfy(problem -> assertThat(problem.message()).contains("the key \"format\" is missing"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "+2", "02", "'2'", "\"2\"   # today's"})
    void todaysIsRead(String number) throws IOException {
        for (String file : FILES) {
            assertThat(problems(file, "format: " + number)).as(file).isEmpty();
        }
    }
}
