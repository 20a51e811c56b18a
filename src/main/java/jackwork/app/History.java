package jackwork.app;

import jackwork.design.DesignFiles;
import jackwork.design.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Every change of a design's files, without end, so that each can be taken back and made again: also after the page was
 * closed and the program ended. Texts are kept under their own names; one line of a list tells each step. A change made
 * outside is a step as well.
 */
final class History {

    static final String OUTSIDE = "a change made outside";
    /** Several files are about to be written, and: they are. */
    private static final String WRITING = "writing";

    private static final String WRITTEN = "written";

    private final Path workshop;
    private final KeptTexts kept;
    private final StepList list;
    private final List<Step> steps = new ArrayList<>();
    /** Steps that are done; those behind it can be made again. */
    private int done;
    /** The names of the texts as they were last seen, by file. */
    private final Map<Path, String> known = new LinkedHashMap<>();

    /** Several files whose writing was begun and not ended. */
    private @Nullable Step writing;

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
        Path folder = workshop.resolve(".jackwork").resolve("history").resolve(design.replace('/', '~'));
        this.kept = new KeptTexts(folder);
        this.list = new StepList(folder.resolve("steps.jsonl"));
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
                kept.keep(text);
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
        list.add(line(what, Map.of(), names));
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
        push(new Step(label, kept.keep(before), kept.keep(after)));
    }

    private void push(Step step) {
        ObjectNode line = line("did", step.before(), step.after());
        line.put("label", step.label());
        list.add(line);
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
        (back ? step.before() : step.after()).forEach((path, name) -> texts.put(path, kept.text(name)));
        return new Move(what, step.label(), back ? step.after() : step.before(), texts);
    }

    /** Notes a step back or forth that was written to the files. */
    void moved(Move move) {
        settle(move.what(), kept.keep(move.texts()));
    }

    /**
     * Writes texts of a design's files: all of them or none. Of several it is noted before and after, so that a program
     * that was killed between them is found out.
     *
     * @param before what stands there now
     * @throws UncheckedIOException when one cannot be written; those before it are as they were
     */
    void write(Map<Path, String> before, Map<Path, String> after) {
        if (after.size() > 1) {
            list.add(line(WRITING, kept.keep(before), kept.keep(after)));
        }
        List<Path> written = new ArrayList<>();
        try {
            after.forEach((path, text) -> {
                WholeFile.save(path, text);
                written.add(path);
            });
        } catch (UncheckedIOException e) {
            putBack(written, before, e);
            throw e;
        }
        if (after.size() > 1) {
            list.add(line(WRITTEN, Map.of(), Map.of()));
        }
    }

    private void putBack(List<Path> written, Map<Path, String> before, UncheckedIOException why) {
        try {
            written.forEach(path -> WholeFile.save(path, before.getOrDefault(path, "")));
            if (before.size() > 1) {
                list.add(line(WRITTEN, Map.of(), Map.of()));
            }
        } catch (UncheckedIOException e) {
            // No room for that either: what was begun is ended as soon as there is.
            list.forget();
            why.addSuppressed(e);
        }
    }

    /** Ends what a killed program began: when some of its files stand as they were and the others as they were to be. */
    void finish() {
        load();
        Step begun = writing;
        if (begun == null) {
            return;
        }
        Map<Path, String> missing = new LinkedHashMap<>();
        for (Map.Entry<Path, String> file : begun.after().entrySet()) {
            String name = DesignFiles.nameOf(KeptTexts.read(file.getKey()));
            if (name.equals(begun.before().get(file.getKey()))) {
                missing.put(file.getKey(), kept.text(file.getValue()));
            } else if (!name.equals(file.getValue())) {
                return; // changed by hand since: whoever did that knows better
            }
        }
        if (!missing.isEmpty() && missing.size() < begun.after().size()) {
            Turn.take(workshop, () -> {
                missing.forEach(WholeFile::save);
                list.add(line(WRITTEN, Map.of(), Map.of()));
            });
        }
        writing = null;
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

    /** Reads the list when there is more of it than was read. */
    private void load() {
        try {
            if (!list.isNews()) {
                return;
            }
            steps.clear();
            known.clear();
            writing = null;
            done = 0;
            for (JsonNode node : list.all()) {
                take(
                        node.path("what").asString(""),
                        node.path("label").asString(""),
                        names(node.path("before")),
                        names(node.path("after")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void take(String what, String label, Map<Path, String> before, Map<Path, String> after) {
        switch (what) {
            case WRITING -> {
                writing = new Step(label, before, after);
                return;
            }
            case WRITTEN -> {
                writing = null;
                return;
            }
            case "did" -> {
                steps.subList(done, steps.size()).clear();
                steps.add(new Step(label, before, after));
                done = steps.size();
            }
            case "undone" -> done = Math.max(0, done - 1);
            case "redone" -> done = Math.min(steps.size(), done + 1);
            default -> throw new IllegalStateException("the history reads \"" + what + "\"");
        }
        writing = null;
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
