package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.app.wire.StaleException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A program that changes three files of the heron at once, again and again, and says of each time that it is saved. */
final class SavingChild {

    static final List<String> FILES = List.of("design.yaml", "figure.yaml", "figure.svg");

    private SavingChild() {}

    /** @param arguments workshop, what the changes are called, how many */
    public static void main(String[] arguments) throws IOException {
        Path heron = Path.of(arguments[0]).toAbsolutePath().resolve("heron");
        Editor editor = new Editor(new Workbench(heron.getParent()));
        int most = Integer.parseInt(arguments[2]);
        for (int i = 0; i < most; i++) {
            String word = arguments[1] + i;
            try {
                save(editor, heron, word);
                System.out.println(word);
            } catch (StaleException e) {
                System.out.println("! somebody else was first");
            } catch (UncheckedIOException e) {
                System.out.println("! " + e.getCause());
                return;
            }
        }
    }

    private static void save(Editor editor, Path heron, String word) throws IOException {
        String version = Json.mapper()
                .readTree(editor.versionJson("heron"))
                .path("version")
                .asString();
        Map<Path, String> before = new LinkedHashMap<>();
        Map<Path, String> after = new LinkedHashMap<>();
        for (String name : FILES) {
            Path file = heron.resolve(name);
            String text = Files.readString(file);
            before.put(file, text);
            after.put(file, with(text, name, word));
        }
        editor.replace("heron", version, word, before, after);
    }

    /** The same with a word in a comment at its end. */
    static String with(String text, String name, String word) {
        boolean drawing = name.endsWith(".svg");
        String bare = text.replaceFirst(drawing ? "(?s)\n<!-- saved .*" : "(?s)\n# saved .*", "");
        return bare + (drawing ? "\n<!-- saved " + word + " -->\n" : "\n# saved " + word + "\n");
    }

    /** Which change a file is of; empty when of none. */
    static String word(Path file) throws IOException {
        String text = Files.readString(file);
        int at = text.lastIndexOf(" saved ");
        return at < 0
                ? ""
                : text.substring(at + 7).replaceAll("[^a-z0-9].*", "").strip();
    }
}
