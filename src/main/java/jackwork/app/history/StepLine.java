package jackwork.app.history;

import jackwork.app.wire.Json;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One line of a history. A file is named by its path from the workshop, with slashes, and is one of those that the changes
 * may touch: no other name means anything.
 *
 * @param label for people
 * @param before and after: names of texts by file
 */
record StepLine(What what, String label, Map<Path, String> before, Map<Path, String> after) {

    enum What {
        /** Several files are about to be written, and: they are. */
        WRITING,
        WRITTEN,
        DID,
        UNDONE,
        REDONE;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private static final int LONGEST_LABEL = 200;

    /** How much of a strange word is told. */
    private static final int TOLD = 60;

    StepLine {
        label = label.length() > LONGEST_LABEL ? label.substring(0, LONGEST_LABEL) : label;
    }

    /**
     * @param files that may be named, by their names
     * @throws IllegalArgumentException saying what else it reads
     */
    static StepLine of(JsonNode node, Map<String, Path> files) {
        String word = node.path("what").asString("");
        What what = List.of(What.values()).stream()
                .filter(known -> known.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("it reads \"" + told(word) + "\" for what was done"));
        StepLine line = new StepLine(
                what,
                node.path("label").asString(""),
                names(node.path("before"), files),
                names(node.path("after"), files));
        boolean changes = what == What.DID || what == What.WRITING;
        if (changes && !line.before().keySet().equals(line.after().keySet())) {
            throw new IllegalArgumentException("it names other files before than after");
        }
        return line;
    }

    private static Map<Path, String> names(JsonNode node, Map<String, Path> files) {
        Map<Path, String> names = new LinkedHashMap<>();
        node.properties().forEach(entry -> {
            Path file = files.get(entry.getKey());
            if (file == null) {
                throw new IllegalArgumentException(
                        "it names \"" + told(entry.getKey()) + "\", and this design changes no file of that name");
            }
            String name = entry.getValue().asString("");
            if (!name.matches("[0-9a-f]{20}")) {
                throw new IllegalArgumentException("it names a text \"" + told(name) + "\", which no text is called");
            }
            names.put(file, name);
        });
        return names;
    }

    private static String told(String word) {
        String seen = word.replaceAll("\\p{C}", "?");
        return seen.length() > TOLD ? seen.substring(0, TOLD) + "…" : seen;
    }

    /** @param workshop that the names of files begin at */
    ObjectNode json(Path workshop) {
        ObjectNode line = Json.object();
        line.put("what", what.word());
        ObjectNode from = line.putObject("before");
        before.forEach((path, name) -> from.put(name(workshop, path), name));
        ObjectNode to = line.putObject("after");
        after.forEach((path, name) -> to.put(name(workshop, path), name));
        if (!label.isEmpty()) {
            line.put("label", label);
        }
        return line;
    }

    static String name(Path workshop, Path file) {
        return workshop.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }
}
