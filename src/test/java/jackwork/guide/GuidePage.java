package jackwork.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the guide as far as a program can hold it to its word.
 *
 * @param name its file's
 * @param steps pictures and commands, in order
 * @param prose what is left without code and links
 */
record GuidePage(String name, List<Step> steps, List<Block> blocks, String prose, int lines) {

    private static final Pattern FENCE = Pattern.compile("(?m)^```(\\w*)[^\\n]*\\n(.*?)^```$", Pattern.DOTALL);
    private static final Pattern STEP =
            Pattern.compile("!\\[[^\\]]*]\\(pictures/([^)]+)\\)|^```console\\n(.*?)^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern LINK = Pattern.compile("]\\([^)]*\\)");
    private static final Pattern CODE = Pattern.compile("`[^`\\n]*`");

    /** What is done there. */
    sealed interface Step permits Picture, Command {}

    /** @param file in docs/guide/pictures */
    record Picture(String file) implements Step {}

    /**
     * @param words as typed after {@code jackwork}
     * @param quoted lines that it prints, in order; where {@code ...} stands some are left out
     */
    record Command(String words, List<String> quoted) implements Step {}

    /** A block of code, with the word after its fence. */
    record Block(String kind, String text) {}

    static GuidePage read(Path file) throws IOException {
        String text = Files.readString(file).replace("\r\n", "\n");
        List<Step> steps = new ArrayList<>();
        Matcher step = STEP.matcher(text);
        while (step.find()) {
            if (step.group(1) != null) {
                steps.add(new Picture(step.group(1)));
            } else {
                steps.addAll(commands(file, step.group(2)));
            }
        }
        List<Block> blocks = FENCE.matcher(text)
                .results()
                .map(block -> new Block(block.group(1), block.group(2)))
                .toList();
        String prose = CODE.matcher(LINK.matcher(FENCE.matcher(text).replaceAll("")).replaceAll("]"))
                .replaceAll("");
        return new GuidePage(file.getFileName().toString(), steps, blocks, prose, (int) text.lines().count());
    }

    private static List<Command> commands(Path file, String block) {
        List<Command> commands = new ArrayList<>();
        for (String line : block.lines().toList()) {
            if (line.startsWith("$ jackwork ")) {
                commands.add(new Command(line.substring("$ jackwork ".length()), new ArrayList<>()));
            } else if (commands.isEmpty()) {
                throw new IllegalStateException(file + ": read \"" + line + "\", expected \"$ jackwork ...\" first");
            } else {
                commands.get(commands.size() - 1).quoted().add(line);
            }
        }
        return commands;
    }
}
