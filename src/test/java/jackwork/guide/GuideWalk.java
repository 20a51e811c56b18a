package jackwork.guide;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import jackwork.DemoCopy;
import jackwork.cli.Ran;

/** Walks the guide and keeps what came of it. */
final class GuideWalk {

    static final Path GUIDE = Path.of("docs/guide");
    static final Path PICTURES = GUIDE.resolve("pictures");

    /**
     * @param page its file
     * @param quoted what the guide says that it prints
     * @param printed what it printed
     */
    record Said(String page, String command, List<String> quoted, List<String> printed) {

        /** The first quoted line that was not printed, or not in that place; empty when all were. */
        String missing() {
            int at = 0;
            boolean leap = true;
            for (String line : quoted) {
                if (line.equals("...")) {
                    leap = true;
                    continue;
                }
                int found = at;
                while (found < printed.size() && !printed.get(found).equals(line.stripTrailing())) {
                    found++;
                }
                if (found == printed.size() || !leap && found != at) {
                    return line.isEmpty() ? "an empty line after " + (at == 0 ? "nothing" : printed.get(at - 1)) : line;
                }
                at = found + 1;
                leap = false;
            }
            return "";
        }
    }

    private final Path hut;
    private final Path out;
    private final List<Said> said = new ArrayList<>();
    /** By page: what its pictures say. */
    private final Map<String, List<String>> shown = new LinkedHashMap<>();

    private GuideWalk(Path hut, Path out) {
        this.hut = hut;
        this.out = out;
    }

    /** The numbered pages, in order. */
    static List<GuidePage> pages() throws IOException {
        List<GuidePage> pages = new ArrayList<>();
        try (var files = Files.list(GUIDE)) {
            for (Path file : files.filter(f -> f.getFileName().toString().matches("\\d-.*\\.md")).sorted().toList()) {
                pages.add(GuidePage.read(file));
            }
        }
        return pages;
    }

    /**
     * @param folder an empty one, for the workshop
     * @param out where the pictures go, and the words of those that are the page's
     */
    static GuideWalk walk(Path folder, Path out) throws IOException {
        GuideWalk walk = new GuideWalk(DemoCopy.at(folder.resolve("hut")), out);
        Files.createDirectories(out);
        try (GuidePictures pictures = new GuidePictures(walk.hut)) {
            for (GuidePage page : pages()) {
                for (GuidePage.Step step : page.steps()) {
                    walk.take(page, step, pictures);
                }
            }
            pictures.nothingComplained();
        }
        return walk;
    }

    private void take(GuidePage page, GuidePage.Step step, GuidePictures pictures) throws IOException {
        if (step instanceof GuidePage.Picture picture) {
            Path file = out.resolve(picture.file());
            String words = pictures.make(picture.file(), file);
            if (!words.isEmpty()) {
                Files.writeString(words(file), words, StandardCharsets.UTF_8);
            }
            shown.computeIfAbsent(page.name(), name -> new ArrayList<>()).add(words);
        } else if (step instanceof GuidePage.Command command) {
            said.add(new Said(page.name(), command.words(), command.quoted(), run(command.words())));
        }
    }

    /** Beside a picture of the page: what the page says there. */
    static Path words(Path picture) {
        return picture.resolveSibling(picture.getFileName().toString().replace(".png", ".txt"));
    }

    /** Runs a command as if in the workshop's folder. */
    private List<String> run(String words) {
        List<String> arguments = new ArrayList<>();
        String before = "";
        for (String word : split(words)) {
            boolean path = before.equals("-o") || before.equals("--chart") || before.equals("--workshop");
            arguments.add(path || !word.startsWith("-") && Files.exists(hut.resolve(word)) ? hut.resolve(word).toString() : word);
            before = word;
        }
        Ran ran = Ran.run(arguments.toArray(String[]::new));
        return (ran.out() + ran.err())
                .replace(hut + "/", "")
                .lines()
                .map(String::stripTrailing)
                .toList();
    }

    private static List<String> split(String words) {
        List<String> all = new ArrayList<>();
        var matcher = java.util.regex.Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(words);
        while (matcher.find()) {
            all.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return all;
    }

    List<Said> said() {
        return said;
    }

    /** All that is printed or shown on a page, as far as the guide quotes or pictures it. */
    String evidence(String page) {
        StringBuilder all = new StringBuilder();
        shown.getOrDefault(page, List.of()).forEach(words -> all.append(words).append('\n'));
        said.stream().filter(one -> one.page().equals(page)).forEach(one -> one.quoted()
                .forEach(line -> all.append(line).append('\n')));
        return all.toString();
    }
}
