package jackwork.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.stock.CsvReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Out of the log into files and back: nothing lost, and broken files change nothing. */
class ArchiveTest {

    private static final String HEAD = "key,at,design,revision,piece,coin,tries,failures,note\r\n";

    @TempDir(factory = InMemory.class)
    private Path folder;

    private BenchLog log;

    @BeforeEach
    void fill() throws IOException {
        log = BenchLog.in(Files.createDirectory(folder.resolve("workshop")));
        log.freeze(
                "heron",
                "Heron, the \"first\"",
                Instant.parse("2026-03-01T09:30:00Z"),
                "two\nlines",
                new TreeMap<>(Map.of("heron/design.yaml", new byte[] {0, 13, 10, -1}, "workshop.yaml", new byte[0])));
        LogTest.fill(log);
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Sums.sha256(Files.readAllBytes(file)));
            }
        }
        return contents;
    }

    @Test
    void theWholeLogAndBack() throws IOException {
        Path out = folder.resolve("out");
        Archive.write(log, out);
        assertThat(Files.readString(out.resolve("trials.csv")))
                .startsWith("key,at,design,revision,piece,coin,tries,failures,note\r\n")
                .contains("t1,2026-03-01T09:30:00Z,heron,1,R-1,EUR-1,50,lands=2;other-knot=1,\"noted, \"\"so\"\"\nand");
        BenchLog other = BenchLog.in(Files.createDirectory(folder.resolve("other")));
        assertThat(Archive.read(other, out)).isEqualTo(new Archive.Taken(9, 0));
        Path again = folder.resolve("again");
        Archive.write(other, again);
        assertThat(contents(again)).isEqualTo(contents(out)).hasSize(10);
        assertThat(Archive.read(other, out)).isEqualTo(new Archive.Taken(0, 9));
        assertThatThrownBy(() -> Archive.write(log, out)).hasMessageContaining("something in it already");
    }

    /** Every field that can be typed comes back as it was: quotes, commas, line ends, both of them. */
    @Test
    void anyTextIsOneField() {
        Random random = new Random(4180);
        String scraps = "a,\"\r\n; =ä𝄞";
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder("x");
            for (int k = random.nextInt(8); k > 0; k--) {
                int at = random.nextInt(scraps.length());
                text.append(Character.isSurrogate(scraps.charAt(at)) ? "𝄞" : String.valueOf(scraps.charAt(at)));
            }
            String line = CsvTable.line(List.of(text.toString(), "b", text.toString()));
            List<List<CsvReader.Field>> read = CsvReader.read("f", line);
            assertThat(read).hasSize(1);
            assertThat(read.get(0).stream().map(CsvReader.Field::text))
                    .containsExactly(text.toString(), "b", text.toString());
        }
    }

    @Test
    void rowsWithoutKeyAreLoggedOnce() throws IOException {
        Path file = folder.resolve("trials.csv");
        String rows =
                "at,design,revision,coin,tries,failures\n2026-03-02,heron,1,EUR-2,10,\n2026-03-02,heron,1,EUR-2,10,\n";
        Files.writeString(file, "\uFEFF" + rows);
        assertThat(Archive.read(log, file)).isEqualTo(new Archive.Taken(2, 0));
        assertThat(Archive.read(log, file)).isEqualTo(new Archive.Taken(0, 2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "'k,2026-03-01,heron,1,,EUR-1,10,,\nk2,2026-03-01,heron,1,,EUR-1,ten,,' | 'trials.csv:3:30: tries: read \"ten\"'",
                "'k,2026-13-01,heron,1,,EUR-1,10,,' | 'trials.csv:2:3: at: read \"2026-13-01\"'",
                "'k,2026-03-01,heron,1,,EUR-1,10,landz=1,' | 'trials.csv:2:1: read the cause \"landz\"'",
                "'k,2026-03-01,heron,1,,EUR-1,10,lands,' | 'trials.csv:2:32: failures: read \"lands\"'",
                "'k,2026-03-01,heron,1,,EUR-1,10,lands=11,' | 'trials.csv:2:1: 11 failures of 10'",
                "'k,2026-03-01,heron,1,,,10,,' | 'trials.csv:2:23: coin is empty'",
                "'k,2026-03-01,heron,1,,EUR-1,10' | 'trials.csv:2:1: 7 fields, expected 9'",
                "'k,2026-03-01,heron,7,,EUR-1,10,,' | 'no revision 7 of heron'",
                "'k,2026-03-01,heron,1,Z-9,EUR-1,10,,' | 'no piece \"Z-9\"'",
                "'k,2026-03-01,\"heron,1,,EUR-1,10,,' | 'trials.csv:2:14: this quote is never closed'",
                "'k,2026-03-01,her\"on,1,,EUR-1,10,,' | 'trials.csv:2:17: read a quote within'",
                "'k,2026-03-01,\"heron\"x,1,,EUR-1,10,,' | 'trials.csv:2:21: read \"x\", expected a comma'",
                "'k,2026-03-01,heron,1,,EUR-1,99999999999,,' | 'trials.csv:2:29: tries'",
                "'t1,2026-03-01,heron,1,,EUR-1,10,,' | 'already, with other values'"
            })
    void brokenRowsChangeNothing(String rows, String complaint) throws IOException {
        Path file = folder.resolve("trials.csv");
        Files.writeString(file, HEAD + rows.replace("\n", "\r\n") + "\r\n");
        byte[] before = Files.readAllBytes(folder.resolve("workshop/workshop.db"));
        assertThatThrownBy(() -> Archive.read(log, file))
                .isInstanceOf(BenchException.class)
                .hasMessageContaining(complaint);
        assertThat(Files.readAllBytes(folder.resolve("workshop/workshop.db"))).isEqualTo(before);
    }

    @Test
    void brokenHeadsAndFolders() throws IOException {
        Path file = folder.resolve("trials.csv");
        Files.writeString(file, "at,desing\n");
        assertThatThrownBy(() -> Archive.read(log, file))
                .hasMessageContaining("1:4")
                .hasMessageContaining("\"design\"?");
        Files.writeString(file, "at;design;coin\n");
        assertThatThrownBy(() -> Archive.read(log, file)).hasMessageContaining("apart by commas");
        Files.writeString(file, "");
        assertThatThrownBy(() -> Archive.read(log, file)).hasMessageContaining("is empty");
        Files.write(file, "at,coin\n\u00e4".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> Archive.read(log, file))
                .hasMessageContaining("UTF-8")
                .as("refused for good: the page must not send it again and again")
                .matches(thrown -> !((BenchException) thrown).unreached());
        assertThatThrownBy(() -> Archive.read(log, Files.writeString(folder.resolve("birds.csv"), "at\n")))
                .hasMessageContaining("trials.csv");
        Path out = folder.resolve("out");
        Archive.write(log, out);
        Files.writeString(out.resolve("revisions/heron/revision-1/heron/design.yaml"), "other");
        BenchLog other = BenchLog.in(Files.createDirectory(folder.resolve("other")));
        assertThatThrownBy(() -> Archive.read(other, out)).hasMessageContaining("not those that were frozen");
        assertThat(folder.resolve("other")).isEmptyDirectory();
    }

    @Test
    void aFrozenDesignCannotEscapeItsFolder() {
        log.freeze("evil", "Evil", Instant.EPOCH.plusSeconds(1), "", new TreeMap<>(Map.of("../../evil", new byte[1])));
        assertThatThrownBy(() -> Archive.restore(log, new RevisionName("evil", 1), folder.resolve("a/b")))
                .hasMessageContaining("within the workshop's folder");
        assertThat(folder.resolve("evil")).doesNotExist();
    }

    /** CSV damaged at random, seeded: answered in words, or taken; never a fault of ours, never half. */
    @Test
    void damageIsAnsweredInWords() throws IOException {
        Path out = folder.resolve("out");
        Archive.write(log, out);
        Random random = new Random(20261127);
        String[] scraps = {
            "", ",", "\"", "\n", "\r", "=", ";", "-1", "1e9", "NaN", "\u0000", "ä𝄞", "lands=1", "2026-02-30"
        };
        List<String> names = Kinds.names();
        int complaints = 0;
        for (int i = 0; i < 700; i++) {
            Path file = out.resolve(names.get(i % names.size()) + ".csv");
            String whole = Files.readString(file);
            int characters = whole.codePointCount(0, whole.length());
            int first = random.nextInt(characters);
            int from = whole.offsetByCodePoints(0, first);
            int to = whole.offsetByCodePoints(0, Math.min(characters, first + random.nextInt(4)));
            Files.writeString(
                    file, whole.substring(0, from) + scraps[random.nextInt(scraps.length)] + whole.substring(to));
            int before = entries();
            try {
                Archive.Taken taken = Archive.read(log, file);
                assertThat(entries()).isEqualTo(before + taken.added());
            } catch (BenchException e) {
                complaints++;
                assertThat(e.getMessage()).isNotBlank();
                assertThat(entries()).isEqualTo(before);
            } finally {
                Files.writeString(file, whole);
            }
        }
        assertThat(complaints).isGreaterThan(200);
    }

    private int entries() {
        return Kinds.ALL.stream().mapToInt(kind -> log.list(kind).size()).sum();
    }
}
