package jackwork.app;

import jackwork.design.DesignFiles;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Every change of a design's files, without end, so that each can be taken back and made again: also after the page was
 * closed and the program ended. Texts are kept under their own names; one line of a list tells each step. A change made
 * outside is a step as well.
 */
final class History {

    private static final String OUTSIDE = "a change made outside";

    private final Path workshop;
    private final Path folder;
    private final Path list;
    private final List<Step> steps = new ArrayList<>();
    /** Steps that are done; those behind it can be made again. */
    private int done;
    /** The names of the texts as they were last seen, by file. */
    private final Map<Path, String> known = new LinkedHashMap<>();

    /** Bytes of the list that are read already: another program may add to it. */
    private long read = -1;

    /** @param before and after: names of texts by file */
    private record Step(String label, Map<Path, String> before, Map<Path, String> after) {}

    /**
     * One step back or forth, not done yet.
     *
     * @param from the texts' names that must stand there now
     * @param texts to write
     */
    record Move(String what, String label, Map<Path, String> from, Map<Path, String> texts) {}

    History(Path workshop, String design) {
        this.workshop = workshop;
        this.folder = workshop.resolve(".jackwork").resolve("history").resolve(design.replace('/', '~'));
        this.list = folder.resolve("steps.jsonl");
    }

    /**
     * Looks at the files as they are: what was changed outside since they were last seen becomes a step. Writes nothing
     * as long as nothing was ever changed from here.
     */
    void see(Map<Path, String> texts) {
        load();
        Map<Path, String> before = new LinkedHashMap<>();
        Map<Path, String> after = new LinkedHashMap<>();
        withDrawings(texts).forEach((path, text) -> {
            String name = DesignFiles.nameOf(text);
            String old = known.get(path);
            if (old != null && !old.equals(name)) {
                before.put(path, old);
                after.put(path, name);
                keep(name, text);
            }
        });
        if (after.isEmpty()) {
            return;
        }
        if (done > 0 && steps.get(done - 1).before().equals(after)) {
            settle("undone", after);
        } else if (done < steps.size() && steps.get(done).after().equals(after)) {
            settle("redone", after);
        } else {
            push(new Step(OUTSIDE, before, after));
        }
    }

    /** The files stand where a step would have brought them: it was noted, and the program was killed; or done by hand. */
    private void settle(String what, Map<Path, String> names) {
        write(line(what, Map.of(), names));
        take(what, "", Map.of(), names);
    }

    /** Files besides the given ones that were changed from here before, drawings, as they are now. */
    private Map<Path, String> withDrawings(Map<Path, String> texts) {
        Map<Path, String> all = new LinkedHashMap<>(texts);
        for (Path path : known.keySet()) {
            if (!all.containsKey(path) && Files.isRegularFile(path)) {
                try {
                    all.put(path, Files.readString(path));
                } catch (IOException e) {
                    // Not text any more: its reader says so.
                }
            }
        }
        return all;
    }

    /** Notes a change that is about to be written to the files: one that was not is found out by {@link #see}. */
    void did(String label, Map<Path, String> before, Map<Path, String> after) {
        push(new Step(label, keep(before), keep(after)));
    }

    private void push(Step step) {
        ObjectNode line = line("did", step.before(), step.after());
        line.put("label", step.label());
        write(line);
        known.putAll(step.before());
        take("did", step.label(), step.before(), step.after());
    }

    Optional<String> undoLabel() {
        return done == 0 ? Optional.empty() : Optional.of(steps.get(done - 1).label());
    }

    Optional<String> redoLabel() {
        return done == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(done).label());
    }

    /** What to write to take the last step back. */
    Optional<Move> undo() {
        return done == 0 ? Optional.empty() : Optional.of(move("undone", steps.get(done - 1)));
    }

    /** What to write to make the next step again. */
    Optional<Move> redo() {
        return done == steps.size() ? Optional.empty() : Optional.of(move("redone", steps.get(done)));
    }

    private Move move(String what, Step step) {
        boolean back = what.equals("undone");
        Map<Path, String> texts = new LinkedHashMap<>();
        (back ? step.before() : step.after()).forEach((path, name) -> texts.put(path, text(name)));
        return new Move(what, step.label(), back ? step.after() : step.before(), texts);
    }

    /** Notes a step back or forth that was written to the files. */
    void moved(Move move) {
        settle(move.what(), keep(move.texts()));
    }

    private Map<Path, String> keep(Map<Path, String> texts) {
        Map<Path, String> names = new LinkedHashMap<>();
        texts.forEach((path, text) -> {
            String name = DesignFiles.nameOf(text);
            names.put(path, name);
            keep(name, text);
        });
        return names;
    }

    private void keep(String name, String text) {
        Path file = folder.resolve(name + ".yaml");
        if (!Files.exists(file)) {
            create();
            WholeFile.save(file, text);
        }
    }

    private String text(String name) {
        try {
            return Files.readString(folder.resolve(name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void create() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ObjectNode line(String what, Map<Path, String> before, Map<Path, String> after) {
        ObjectNode line = Json.object();
        line.put("what", what);
        ObjectNode from = line.putObject("before");
        before.forEach((path, name) -> from.put(relative(path), name));
        ObjectNode to = line.putObject("after");
        after.forEach((path, name) -> to.put(relative(path), name));
        return line;
    }

    private String relative(Path path) {
        return workshop.relativize(path).toString().replace('\\', '/');
    }

    private void write(ObjectNode line) {
        create();
        try {
            Files.writeString(
                    list,
                    (isTorn() ? "\n" : "") + Json.compact(line) + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND,
                    StandardOpenOption.SYNC);
            read = Files.size(list);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads the list when there is more of it than was read. */
    /** Whether its last line was never finished: what follows must not be written onto it. */
    private boolean isTorn() throws IOException {
        if (!Files.isRegularFile(list) || Files.size(list) == 0) {
            return false;
        }
        try (RandomAccessFile file = new RandomAccessFile(list.toFile(), "r")) {
            file.seek(file.length() - 1);
            return file.read() != '\n';
        }
    }

    private void load() {
        try {
            long size = Files.isRegularFile(list) ? Files.size(list) : 0;
            if (size == read) {
                return;
            }
            steps.clear();
            known.clear();
            done = 0;
            // Not as strict text: a line may end within a letter.
            String text = size == 0 ? "" : new String(Files.readAllBytes(list), StandardCharsets.UTF_8);
            for (String line : text.lines().toList()) {
                try {
                    JsonNode node = Json.mapper().readTree(line);
                    take(
                            node.path("what").asString(""),
                            node.path("label").asString(""),
                            names(node.path("before")),
                            names(node.path("after")));
                } catch (JacksonException e) {
                    // The last line of a program that was killed while writing it.
                }
            }
            read = size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void take(String what, String label, Map<Path, String> before, Map<Path, String> after) {
        switch (what) {
            case "did" -> {
                steps.subList(done, steps.size()).clear();
                steps.add(new Step(label, before, after));
                done = steps.size();
            }
            case "undone" -> done = Math.max(0, done - 1);
            case "redone" -> done = Math.min(steps.size(), done + 1);
            default -> throw new IllegalStateException("the history reads \"" + what + "\"");
        }
        known.putAll(after);
    }

    private Map<Path, String> names(JsonNode node) {
        Map<Path, String> names = new LinkedHashMap<>();
        node.properties()
                .forEach(entry -> names.put(
                        workshop.resolve(entry.getKey()).normalize(),
                        entry.getValue().asString("")));
        return names;
    }
}
