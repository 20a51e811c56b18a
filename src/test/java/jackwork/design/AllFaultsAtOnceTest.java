package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One reading tells every misspelt name and every number beyond its bounds, whichever stands beside which. */
class AllFaultsAtOnceTest {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();
    private static final Pattern NAME = Pattern.compile("(stock|rod|on|pin|what): ([a-z][a-z0-9-]+)");
    private static final Pattern NUMBER = Pattern.compile("(layer|count|throw|tip|width|mass|hem): (\\d+)(?=[,} \n])");

    private static List<Problem> problems(String design, Map<Path, String> texts) {
        try {
            DesignReader.read(DEMO.resolve(design), texts);
            return List.of();
        } catch (DesignException e) {
            return e.problems();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron/figure.yaml", "lamplighter/figure.yaml", "boxes/marsh-box/box.yaml"})
    void namesAndNumbersAreToldTogether(String file) throws IOException {
        Path path = DEMO.resolve(file);
        String design = file.startsWith("lamp") ? "lamplighter" : "heron";
        String text = Files.readString(path);
        Random random = new Random(file.hashCode());
        for (int i = 0; i < 12; i++) {
            List<String> lost = new ArrayList<>();
            String spoiled = spoil(text, NAME, 2, random, lost, "zzq");
            int names = lost.size();
            spoiled = spoil(spoiled, NUMBER, 2, random, lost, "99999");
            List<Problem> told = problems(design, Map.of(path, spoiled));
            assertThat(names).isEqualTo(2);
            assertThat(told.stream().filter(problem -> problem.message().contains("zzq")))
                    .as(lost.toString())
                    .hasSize(2);
            assertThat(told.stream().filter(problem -> problem.message().contains("99999")))
                    .as(lost.toString())
                    .hasSize(lost.size() - 2);
            // And nothing that only follows from them.
            assertThat(told).as(lost.toString()).hasSize(lost.size()).allMatch(problem -> problem.line() > 0);
        }
    }

    private static String spoil(String text, Pattern what, int times, Random random, List<String> lost, String ending) {
        String spoiled = text;
        for (int i = 0; i < times; i++) {
            List<Integer> places = new ArrayList<>();
            Matcher all = what.matcher(spoiled);
            while (all.find()) {
                boolean comment = spoiled.lastIndexOf('#', all.start()) > spoiled.lastIndexOf('\n', all.start());
                if (!comment && !all.group().contains("zzq") && !all.group().endsWith("99999")) {
                    places.add(all.start());
                }
            }
            Matcher one = what.matcher(spoiled);
            if (places.isEmpty() || !one.find(places.get(random.nextInt(places.size())))) {
                return spoiled;
            }
            spoiled = spoiled.substring(0, one.end()) + ending + spoiled.substring(one.end());
            lost.add(one.group());
        }
        return spoiled;
    }

    @Test
    void ofTheWorkshopToo() {
        String text = WorkshopReader.text(DEMO)
                .replace("kind: bamboo", "kind: bambo")
                .replace("margin: 5", "margin: 5000")
                .replace("friction: []", "friction: [{between: [wodd, coin], coefficient: 30}]");
        List<Problem> told = problems("heron", Map.of(DEMO.resolve("workshop.yaml"), text));
        assertThat(told.stream().map(Problem::message))
                .hasSize(4)
                .anyMatch(message -> message.contains("bambo"))
                .anyMatch(message -> message.contains("5000"))
                .anyMatch(message -> message.contains("wodd"))
                .anyMatch(message -> message.contains("read 30"));
    }

    /** An entry that could not be read is not said to be missing where it is named. */
    @Test
    void nothingIsSaidToBeUnknownThatOnlyCouldNotBeRead() throws IOException {
        Path path = DEMO.resolve("lamplighter/figure.yaml");
        String text = Files.readString(path)
                .replace("hinge:    {parts: [stand, door], rod: bamboo-3}", "hinge: {rod: bamboo-3, parts: 3}");
        assertThat(problems("lamplighter", Map.of(path, text)).stream().map(Problem::message))
                .noneMatch(message -> message.contains("expected a pin"));
    }
}
