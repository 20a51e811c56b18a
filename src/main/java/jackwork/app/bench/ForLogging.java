package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.List;
import java.util.Map;

/** Entries of the page's, to be logged. */
record ForLogging(List<Typed> entries) implements Payload {

    /**
     * @param id a random UUID of the page's making
     * @param kind as its CSV file is called; {@code bucket}, or {@code strike} with {@code of}, {@code key}, {@code why}
     * @param fields by the names of the CSV columns
     */
    record Typed(String id, String kind, String at, String note, Map<String, String> fields) {}
}
