package jackwork.app.wire;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.SortedMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files as one zip: the same files give the same bytes, in their names' order and all of one date. */
public final class Zip {

    /** The first that a zip can hold. */
    private static final LocalDateTime DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Zip() {}

    /** What is in a file. */
    public interface Content {
        void to(OutputStream out) throws IOException;
    }

    /** @param files by their names in the zip, with slashes */
    public static void write(SortedMap<String, Content> files, OutputStream out) throws IOException {
        ZipOutputStream entries = new ZipOutputStream(out);
        for (Map.Entry<String, Content> file : files.entrySet()) {
            ZipEntry entry = new ZipEntry(file.getKey());
            entry.setTimeLocal(DATE);
            entries.putNextEntry(entry);
            file.getValue().to(entries);
            entries.closeEntry();
        }
        entries.finish();
    }
}
