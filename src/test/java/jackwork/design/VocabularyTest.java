package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** No word of a file is without its meaning: the table says of each what it is, and what it may be. */
@Tag("quick")
class VocabularyTest {

    /** Their bounds and meanings stand in the catalogue of money and minutes, or are the reader's own. */
    private static boolean elsewhere(VocabularyTable.Row row) {
        return row.path().startsWith("workshop.pay.") || row.word().key().equals("format");
    }

    private static List<VocabularyTable.Row> rows() {
        List<VocabularyTable.Row> rows = VocabularyTable.rows();
        assertThat(rows).hasSizeGreaterThan(150);
        return rows;
    }

    @Test
    void everyNumberSaysWhatItMayBeAndWhy() {
        assertThat(rows())
                .filteredOn(row -> row.word().isNumber() && !elsewhere(row))
                .allSatisfy(row -> {
                    Range range = Range.of(row.word()).orElseThrow(() -> new AssertionError(row.path()));
                    assertThat(range.least()).as(row.path()).isLessThan(range.most());
                    assertThat(range.usualFrom()).as(row.path()).isBetween(range.least(), range.most());
                    assertThat(range.usualTo()).as(row.path()).isBetween(range.usualFrom(), range.most());
                    assertThat(range.why()).as(row.path()).hasSizeGreaterThan(8);
                });
    }

    @Test
    void everyWordIsANameAChoiceOrTextAndSaysSo() {
        assertThat(rows())
                .filteredOn(row -> row.word().leaf() == String.class)
                .allSatisfy(row -> assertThat((row.word().names().isPresent() ? 1 : 0)
                                + (row.word().choices().isEmpty() ? 0 : 1)
                                + (row.word().isText() ? 1 : 0))
                        .as(row.path() + ": a name of something, one of some words, or free text?")
                        .isEqualTo(1));
    }

    @Test
    void everyWordHasAMeaning() {
        assertThat(rows())
                .filteredOn(row -> !row.path().startsWith("workshop.pay"))
                .allSatisfy(row -> assertThat(row.word().about()).as(row.path()).isNotEmpty());
    }

    @Test
    void thePageFollows() throws IOException {
        assertThat(Files.readString(VocabularyTable.PAGE))
                .as("docs/vocabulary.md has drifted: run VocabularyTable.main of the test sources")
                .isEqualTo(VocabularyTable.text());
    }
}
