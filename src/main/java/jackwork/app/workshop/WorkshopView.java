package jackwork.app.workshop;

import jackwork.app.wire.Payload;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All of a workshop's own numbers and words, for the page.
 *
 * @param version of {@code workshop.yaml}
 * @param undo what would be taken back; null when nothing
 * @param redo what would be made again; null when nothing
 * @param putAside why what was kept for taking back is used no longer, and where it is; null when all is well
 */
record WorkshopView(
        String version,
        String name,
        String currency,
        List<Section> sections,
        @Nullable String undo,
        @Nullable String redo,
        @Nullable String putAside)
        implements Payload {

    enum ValueKind {
        NUMBER,
        PLAIN,
        SIZE,
        WORD,
        YES_NO
    }

    /** @param about what belongs here, in a sentence */
    record Section(String id, String title, String about, List<Group> groups) {}

    /**
     * @param name of a sheet, a machine's part; empty for what stands alone
     * @param path of the whole, where all of it can be taken out; empty elsewhere
     */
    record Group(String name, String path, List<Value> values) {}

    /**
     * @param words as it stands in the file; empty when nothing is said and nothing guessed
     * @param number with its interval and basis, of that kind alone
     * @param written whether the file says it; else it is our guess
     * @param mayGo whether it can be taken out of the file alone
     * @param choices the only words that go, where there are some
     * @param how it is measured; empty where we know no short way
     */
    record Value(
            String path,
            String name,
            String about,
            ValueKind kind,
            String unit,
            String words,
            @Nullable Known number,
            boolean written,
            boolean mayGo,
            List<String> choices,
            String how) {}

    /** @param basis {@code measured}, {@code published} or {@code guess} */
    record Known(double value, double low, double high, String basis, String source) {}
}
