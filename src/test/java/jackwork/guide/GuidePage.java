package jackwork.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A page of the documents, as far as a program can hold it to its word.
 *
 * @param name its file's
 * @param steps what is shown and run, in order
 * @param prose what is left without code and links
 */
record GuidePage(String name, List<Step> steps, String prose, int lines) {

    private static final String FENCED = "^```(\\w*)(?: ([^\\n]+))?\\n(.*?)^```$";
    private static final Pattern FENCE = Pattern.compile(FENCED, Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern STEP =
            Pattern.compile("!\\[[^\\]]*]\\(([^)]+)\\)|" + FENCED, Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern LINK = Pattern.compile("]\\([^)]*\\)");
    private static final Pattern CODE = Pattern.compile("`[^`\\n]*`");

    /** What stands there. */
    sealed interface Step permits Picture, Command, Block {}

    /** @param file from the guide's folder */
    record Picture(String file) implements Step {}

    /**
     * @param words as typed after {@code jackwork}
     * @param quoted lines that it prints, in order; where {@code ...} stands some are left out
     */
    record Command(String words, List<String> quoted) implements Step {}

    /**
     * Any other block of code.
     *
     * @param kind the word after its fence
     * @param about what comes after that word: the file that it is of; may be empty
     */
    record Block(String kind, String about, List<String> quoted) implements Step {

        String text() {
            return String.join("\n", quoted) + "\n";
        }
    }

    static GuidePage read(Path file) throws IOException {
        String text = Files.readString(file).replace("\r\n", "\n");
        List<Step> steps = new ArrayList<>();
        for (MatchResult found : STEP.matcher(text).results().toList()) {
            if (found.group(1) != null) {
                steps.add(new Picture(found.group(1)));
            } else if (found.group(2).equals("console")) {
                steps.addAll(commands(file, found.group(4)));
            } else {
                String about = found.group(3);
                steps.add(new Block(
                        found.group(2),
                        about == null ? "" : about,
                        found.group(4).lines().toList()));
            }
        }
        String prose = CODE.matcher(
                        LINK.matcher(FENCE.matcher(text).replaceAll("")).replaceAll("]"))
                .replaceAll("");
        return new GuidePage(
                file.getFileName().toString(), steps, prose, (int) text.lines().count());
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
