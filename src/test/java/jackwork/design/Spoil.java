package jackwork.design;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Spoils files in one place, and asks what the reader says of it. */
final class Spoil {

    private Spoil() {}

    /** Replaces the one place where {@code from} stands. */
    static void edit(Path file, String from, String to) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        int at = text.indexOf(from);
        if (at < 0 || text.indexOf(from, at + 1) >= 0) {
            throw new IllegalStateException(file + " does not hold \"" + from + "\" exactly once");
        }
        Files.writeString(file, text.replace(from, to), StandardCharsets.UTF_8);
    }

    /** Every complaint of reading a design. */
    static String complaint(Path design) {
        try {
            DesignReader.read(design);
        } catch (DesignException e) {
            return String.valueOf(e.getMessage());
        }
        return "";
    }
}
