package jackwork.app.pay;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignReader;
import jackwork.make.Quantities;
import jackwork.price.Batch;
import jackwork.price.Costing;
import jackwork.price.Edited;
import jackwork.price.Rates;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class QuickerEditsTest {

    private static final int BATCH = 10;
    /**
     * EUR a piece, one sheet more or less in the batch, and what its longer or shorter ways cost the laser: they are laid out
     * tightly for the one, roughly for the other.
     */
    private static final Offset<Double> ROUGHLY = Offset.offset(2.60 / BATCH + 0.05);

    private static final Rates RATES =
            Rates.of(DesignReader.read(Path.of("demo/heron")).workshop());

    @TempDir
    Path folder;

    /** Taken, the price of a batch says the same: beds of the printer are those of the batch. */
    @Test
    void whatAnEditSavesIsWhatThePriceSaysOnceItIsTaken() throws IOException {
        Path heron = DemoCopy.with(folder.resolve("demo"), "heron").resolve("heron");
        Path file = heron.resolve("design.yaml");
        String before = Files.readString(file);
        Costing now = costing(heron);
        int printed = 0;
        for (Edited edit : new QuickerEdits(heron, DesignReader.read(heron), BATCH, words -> {}).all()) {
            if (!edit.id().equals("printed-pivots")) {
                Files.writeString(file, DesignEdit.withWords(before, edit.edit()));
                Costing then = costing(heron);
                double roughly = costing(edit.as())
                        .floor()
                        .subtract(costing(edit.batch()).floor())
                        .doubleValue();
                assertThat(roughly)
                        .as(edit.name())
                        .isCloseTo(now.floor().subtract(then.floor()).doubleValue(), ROUGHLY);
                printed++;
            }
        }
        assertThat(printed).isEqualTo(2);
    }

    private static Costing costing(Path design) {
        Design read = DesignReader.read(design);
        return costing(Pricing.batch(Quantities.of(read, BATCH), read.workshop()));
    }

    private static Costing costing(Batch batch) {
        return Costing.of(batch, RATES, BATCH);
    }
}
