package jackwork.make;

import jackwork.design.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** The folder being written: each file whole or not at all, all of them on the contents page. */
final class PackFolder {

    private final Path folder;
    private final Consumer<String> progress;
    private final List<Path> written = new ArrayList<>();
    /** File and what it is for, by the place where it is needed. */
    private final Map<String, Map<String, String>> contents = new LinkedHashMap<>();

    PackFolder(Path folder, Consumer<String> progress) throws IOException {
        this.folder = folder;
        this.progress = progress;
        Files.createDirectories(folder);
    }

    /**
     * @param where at the laser, at the printer, …
     * @param what it is for, for people
     */
    void save(String where, String name, String what, byte[] bytes) throws IOException {
        write(name, bytes);
        contents.computeIfAbsent(where, key -> new LinkedHashMap<>()).put(name, what);
    }

    void save(String where, String name, String what, String text) throws IOException {
        save(where, name, what, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Last of all. */
    List<Path> finish(String title, List<String> words) throws IOException {
        write("contents.html", page(title, words).getBytes(StandardCharsets.UTF_8));
        return List.copyOf(written);
    }

    private void write(String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name);
        WholeFile.write(file, bytes);
        written.add(file);
        progress.accept(name);
    }

    private String page(String title, List<String> words) {
        StringBuilder html = new StringBuilder("""
                <!doctype html>
                <html lang="en"><head><meta charset="utf-8"><title>%s</title>
                <style>
                body { font: 16px/1.5 "Liberation Sans", Arial, sans-serif; color: #2b2b2b; background: #fbfaf7;
                       max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
                h1 { font-size: 1.6rem; } h2 { font-size: 1.1rem; margin: 1.6rem 0 .3rem; }
                table { border-collapse: collapse; width: 100%%; }
                td { padding: .25rem .6rem .25rem 0; border-top: 1px solid #e3dfd4; vertical-align: top; }
                td:first-child { white-space: nowrap; width: 15rem; }
                a { color: #0b4f54; } p { margin: .4rem 0; }
                </style></head><body>
                """.formatted(escaped(title)));
        html.append("<h1>").append(escaped(title)).append("</h1>\n");
        words.forEach(line -> html.append("<p>").append(escaped(line)).append("</p>\n"));
        contents.forEach((where, files) -> {
            html.append("<h2>").append(escaped(where)).append("</h2>\n<table>\n");
            files.forEach((name, what) -> html.append("<tr><td><a href=\"")
                    .append(escaped(name))
                    .append("\">")
                    .append(escaped(name))
                    .append("</a></td><td>")
                    .append(escaped(what))
                    .append("</td></tr>\n"));
            html.append("</table>\n");
        });
        return html.append("</body></html>\n").toString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
