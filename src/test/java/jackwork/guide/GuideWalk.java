package jackwork.guide;

import jackwork.DemoCopy;
import jackwork.cli.Ran;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Walks the guide and keeps what came of it. */
final class GuideWalk {

    static final Path GUIDE = Path.of("docs/guide");
    static final Path PICTURES = GUIDE.resolve("pictures");

    private static final String MADE = "pictures/";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    /** Options whose word is a path in the workshop's folder. */
    private static final Set<String> TO_FILES = Set.of("-o", "--chart");

    private final Path hut;
    private final Path out;
    private final List<Quote> quotes = new ArrayList<>();
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
            for (Path file : files.filter(f -> f.getFileName().toString().matches("\\d-.*\\.md"))
                    .sorted()
                    .toList()) {
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
                    walk.take(page.name(), step, pictures);
                }
            }
            pictures.requireQuiet();
        }
        return walk;
    }

    private void take(String page, GuidePage.Step step, GuidePictures pictures) throws IOException {
        if (step instanceof GuidePage.Picture picture && picture.file().startsWith(MADE)) {
            Path file = out.resolve(picture.file().substring(MADE.length()));
            String words = pictures.make(file);
            if (!words.isEmpty()) {
                Files.writeString(words(file), words, StandardCharsets.UTF_8);
            }
            shown.computeIfAbsent(page, name -> new ArrayList<>()).add(words);
        } else if (step instanceof GuidePage.Command command) {
            quotes.add(new Quote(page, "jackwork " + command.words(), command.quoted(), run(command.words())));
        } else if (step instanceof GuidePage.Block block && !block.about().isEmpty()) {
            quotes.add(new Quote(page, block.about(), block.quoted(), Files.readAllLines(hut.resolve(block.about()))));
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
        for (MatchResult found : WORD.matcher(words).results().toList()) {
            String word = found.group(1) == null ? found.group(2) : found.group(1);
            boolean path = TO_FILES.contains(before) || !word.startsWith("-") && Files.exists(hut.resolve(word));
            arguments.add(path ? hut.resolve(word).toString() : word);
            before = word;
        }
        if (arguments.get(0).equals("new")) {
            arguments.addAll(List.of("--in", hut.toString()));
        }
        Ran ran = Ran.run(arguments.toArray(String[]::new));
        return (ran.out() + ran.err()).replace(hut + "/", "").lines().toList();
    }

    List<Quote> quotes() {
        return quotes;
    }

    /** All that a page quotes, and what is to be read in its pictures. */
    String evidence(String page) {
        StringBuilder all = new StringBuilder();
        shown.getOrDefault(page, List.of()).forEach(words -> all.append(words).append('\n'));
        quotes.stream()
                .filter(quote -> quote.page().equals(page))
                .forEach(quote -> quote.found().forEach(line -> all.append(line).append('\n')));
        return all.toString();
    }
}
