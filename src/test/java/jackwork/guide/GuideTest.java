package jackwork.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The guide walked from its first page to its last, and held against the program of today. What this proves: that the
 * drawing becomes that design by those steps on the page; that drawings (SVG) are byte for byte what the program makes;
 * that every quoted line is printed; that the page <em>says</em>, where it is pictured, what it said when the picture was
 * taken. What it does not: that screenshots look alike. Fonts differ from machine to machine, so their dots are not
 * compared; look at them after {@code ./check guide}.
 */
@Tag("browser")
class GuideTest {

    private static final long MOST_BYTES = 2_500_000;
    private static final int MOST_LINES = 110;
    private static final Pattern DECIMAL = Pattern.compile("(?<![\\d.])\\d+\\.\\d+(?![\\d.])");

    @TempDir
    private static Path folder;

    private static Path made;
    private static GuideWalk walk;

    @BeforeAll
    static void walkIt() throws IOException {
        made = folder.resolve("pictures");
        walk = GuideWalk.walk(folder, made);
    }

    private static Set<String> names(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void everyQuotedLineIsPrinted() {
        assertThat(walk.quotes()).hasSizeGreaterThan(10);
        assertThat(walk.quotes()).filteredOn(quote -> !quote.isTrue()).isEmpty();
    }

    @Test
    void noPictureIsMissingAndNoneIsLeftOver() throws IOException {
        assertThat(names(GuideWalk.PICTURES)).isEqualTo(names(made));
    }

    @Test
    void drawingsAreWhatTheProgramMakes() throws IOException {
        for (String name : names(made)) {
            if (name.endsWith(".svg")) {
                assertThat(Files.readString(GuideWalk.PICTURES.resolve(name)))
                        .as(name + " has drifted: run ./check guide")
                        .isEqualTo(Files.readString(made.resolve(name)));
            }
        }
    }

    @Test
    void thePageSaysWhatItsPicturesSay() throws IOException {
        for (String name : names(made)) {
            if (name.endsWith(".txt")) {
                assertThat(Files.readString(GuideWalk.PICTURES.resolve(name)))
                        .as(name + " has drifted: run ./check guide, and look at its picture")
                        .isEqualTo(Files.readString(made.resolve(name)));
            }
        }
    }

    @Test
    void everyScreenshotHasItsWords() throws IOException {
        Set<String> names = names(GuideWalk.PICTURES);
        assertThat(names)
                .filteredOn(name -> name.endsWith(".png"))
                .isNotEmpty()
                .allMatch(name -> names.contains(name.replace(".png", ".txt")));
    }

    /** Decimals in the text are the program's: on the same page they are printed, or to be read in a picture. */
    @Test
    void figuresInTheTextAreTheProgramsOwn() throws IOException {
        List<String> strange = new ArrayList<>();
        for (GuidePage page : GuideWalk.pages()) {
            String evidence = walk.evidence(page.name());
            DECIMAL.matcher(page.prose())
                    .results()
                    .map(MatchResult::group)
                    .filter(figure -> !evidence.contains(figure))
                    .forEach(figure -> strange.add(page.name() + ": " + figure));
        }
        assertThat(strange).isEmpty();
    }

    @Test
    void pagesAreShortAndPicturesLight() throws IOException {
        assertThat(GuideWalk.pages()).hasSize(8).allMatch(page -> page.lines() <= MOST_LINES);
        long bytes = 0;
        for (String name : names(GuideWalk.PICTURES)) {
            bytes += Files.size(GuideWalk.PICTURES.resolve(name));
        }
        assertThat(bytes).isLessThan(MOST_BYTES);
    }
}
