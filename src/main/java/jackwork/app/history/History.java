package jackwork.app.history;

import jackwork.design.DesignFiles;
import jackwork.design.Inside;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * Every change of a design's files, without end, so that each can be taken back and made again: also after the page was
 * closed and the program ended. Texts are kept under their own names; one line of a list tells each step. A change made
 * outside is a step as well.
 *
 * <p>A workshop may come from anybody, its history with it. One that says anything but what is written here, of any file
 * but the design's own, is put aside whole, and the maker is told.
 */
public final class History {

    public static final String OUTSIDE = "a change made outside";

    private final Path workshop;
    private final HistoryFolder folder;
    private final Supplier<Optional<Set<Path>>> files;
    private final KeptTexts kept;
    private final StepList list;
    private final List<StepLine> steps = new ArrayList<>();
    /** Steps that are done; those behind it can be made again. */
    private int done;
    /** The names of the texts as they were last seen, by file. */
    private final Map<Path, String> known = new LinkedHashMap<>();

    /** Several files whose writing was begun and not ended. */
    private @Nullable StepLine writing;

    /** What there is to tell of a history that was put aside. */
    private @Nullable String told;

    /**
     * One step back or forth, not done yet.
     *
     * @param from the texts' names that must stand there now
     * @param texts to write
     */
    public record Move(StepLine.What what, String label, Map<Path, String> from, Map<Path, String> texts) {}

    /**
     * @param files that the changes may touch; empty while that cannot be told, and nothing is taken back so long
     */
    public History(Path workshop, HistoryFolder folder, Supplier<Optional<Set<Path>>> files) {
        this.workshop = workshop;
        this.folder = folder;
        this.files = files;
        this.kept = new KeptTexts(folder);
        this.list = new StepList(folder);
    }

    /** Of a history that was put aside since this program began: why, and where it is. */
    public Optional<String> told() {
        return Optional.ofNullable(told);
    }

    /**
     * Looks at the files as they are: what was changed outside since they were last seen becomes a step. Writes nothing
     * as long as nothing was ever changed from here.
     */
    public void see(Map<Path, String> texts) {
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
            settle(StepLine.What.UNDONE, after);
        } else if (done < steps.size() && steps.get(done).after().equals(after)) {
            settle(StepLine.What.REDONE, after);
        } else {
            push(new StepLine(StepLine.What.DID, OUTSIDE, before, after));
        }
    }

    /** The files stand where a step would have brought them: it was noted, and the program was killed; or done by hand. */
    private void settle(StepLine.What what, Map<Path, String> names) {
        StepLine line = new StepLine(what, "", Map.of(), names);
        list.add(line.json(workshop));
        take(line);
    }

    /** Files besides the given ones that were changed from here before, drawings, as they are now. */
    private Map<Path, String> withDrawings(Map<Path, String> texts) {
        Map<Path, String> all = new LinkedHashMap<>(texts);
        for (Path path : known.keySet()) {
            if (!all.containsKey(path) && Files.isRegularFile(path)) {
                try {
                    all.put(path, KeptTexts.read(path));
                } catch (UncheckedIOException e) {
                    // Not text any more: its reader says so.
                }
            }
        }
        return all;
    }

    /** Notes a change that is about to be written to the files: one that was not is found out by {@link #see}. */
    public void did(String label, Map<Path, String> before, Map<Path, String> after) {
        push(new StepLine(StepLine.What.DID, label, kept.keep(before), kept.keep(after)));
    }

    private void push(StepLine step) {
        list.add(step.json(workshop));
        known.putAll(step.before());
        take(step);
    }

    public Optional<String> undoLabel() {
        return done == 0 ? Optional.empty() : Optional.of(steps.get(done - 1).label());
    }

    public Optional<String> redoLabel() {
        return done == steps.size()
                ? Optional.empty()
                : Optional.of(steps.get(done).label());
    }

    /** What to write to take the last step back. */
    public Optional<Move> undo() {
        return done == 0 ? Optional.empty() : move(StepLine.What.UNDONE, steps.get(done - 1));
    }

    /** What to write to make the next step again. */
    public Optional<Move> redo() {
        return done == steps.size() ? Optional.empty() : move(StepLine.What.REDONE, steps.get(done));
    }

    private Optional<Move> move(StepLine.What what, StepLine step) {
        boolean back = what == StepLine.What.UNDONE;
        try {
            Map<Path, String> texts = texts(back ? step.before() : step.after());
            return Optional.of(new Move(what, step.label(), back ? step.after() : step.before(), texts));
        } catch (UnfitHistoryException e) {
            putAside(e);
            return Optional.empty();
        }
    }

    private Map<Path, String> texts(Map<Path, String> names) {
        Map<Path, String> texts = new LinkedHashMap<>();
        names.forEach((path, name) -> texts.put(path, kept.text(name)));
        return texts;
    }

    /** Notes a step back or forth that was written to the files. */
    public void moved(Move move) {
        settle(move.what(), kept.keep(move.texts()));
    }

    /**
     * Writes texts of a design's files: all of them or none. Of several it is noted before and after, so that a program
     * that was killed between them is found out.
     *
     * @param before what stands there now
     * @throws UncheckedIOException when one cannot be written; those before it are as they were
     */
    public void write(Map<Path, String> before, Map<Path, String> after) {
        if (after.size() > 1) {
            add(StepLine.What.WRITING, kept.keep(before), kept.keep(after));
        }
        List<Path> written = new ArrayList<>();
        try {
            after.forEach((path, text) -> {
                Inside.save(workshop, path, text);
                written.add(path);
            });
        } catch (UncheckedIOException e) {
            putBack(written, before, e);
            throw e;
        }
        if (after.size() > 1) {
            add(StepLine.What.WRITTEN, Map.of(), Map.of());
        }
    }

    private void putBack(List<Path> written, Map<Path, String> before, UncheckedIOException why) {
        try {
            written.forEach(path -> Inside.save(workshop, path, before.getOrDefault(path, "")));
            if (before.size() > 1) {
                add(StepLine.What.WRITTEN, Map.of(), Map.of());
            }
        } catch (UncheckedIOException e) {
            // No room for that either: what was begun is ended as soon as there is.
            list.forget();
            why.addSuppressed(e);
        }
    }

    /** Ends what a killed program began: when some of its files stand as they were and the others as they were to be. */
    public void finish() {
        load();
        StepLine begun = writing;
        if (begun == null) {
            return;
        }
        Map<Path, String> missing = new LinkedHashMap<>();
        for (Map.Entry<Path, String> file : begun.after().entrySet()) {
            String name;
            try {
                name = DesignFiles.nameOf(KeptTexts.read(file.getKey()));
            } catch (UncheckedIOException e) {
                return; // gone, or no text any more: its reader says so
            }
            if (name.equals(begun.before().get(file.getKey()))) {
                missing.put(file.getKey(), file.getValue());
            } else if (!name.equals(file.getValue())) {
                return; // changed by hand since: whoever did that knows better
            }
        }
        if (!missing.isEmpty() && missing.size() < begun.after().size()) {
            try {
                Map<Path, String> texts = texts(missing);
                Turn.take(workshop, () -> {
                    texts.forEach((path, text) -> Inside.save(workshop, path, text));
                    add(StepLine.What.WRITTEN, Map.of(), Map.of());
                });
            } catch (UnfitHistoryException e) {
                putAside(e);
            }
        }
        writing = null;
    }

    private void add(StepLine.What what, Map<Path, String> before, Map<Path, String> after) {
        list.add(new StepLine(what, "", before, after).json(workshop));
    }

    /** Reads the list when there is more of it than was read. */
    private void load() {
        try {
            if (!list.isNews()) {
                return;
            }
            forget();
            Map<String, Path> names = new LinkedHashMap<>();
            Optional<Set<Path>> own = files.get();
            own.ifPresent(all -> all.forEach(file -> names.put(StepLine.name(workshop, file), file)));
            int number = 0;
            for (JsonNode node : own.isPresent() ? list.all() : List.<JsonNode>of()) {
                number++;
                if (node != null) {
                    take(line(node, names, number));
                }
            }
        } catch (UnfitHistoryException e) {
            putAside(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private StepLine line(JsonNode node, Map<String, Path> names, int number) {
        try {
            return StepLine.of(node, names);
        } catch (IllegalArgumentException e) {
            throw folder.unfit("line " + number + " of its list of steps is no step: " + e.getMessage());
        }
    }

    private void forget() {
        steps.clear();
        known.clear();
        writing = null;
        done = 0;
    }

    private void putAside(UnfitHistoryException why) {
        forget();
        list.forget();
        told = "What was kept for taking changes back cannot be relied on: " + why.getMessage()
                + ". It is used no longer, and no file was changed. "
                + folder.putAside(why.at())
                        .map(place -> "It is kept in “" + place + "”, to be looked at.")
                        .orElse("It could not be moved away; do that yourself: " + why.at());
    }

    private void take(StepLine line) {
        switch (line.what()) {
            case WRITING -> {
                writing = line;
                return;
            }
            case WRITTEN -> {
                writing = null;
                return;
            }
            case DID -> {
                steps.subList(done, steps.size()).clear();
                steps.add(line);
                done = steps.size();
            }
            case UNDONE -> done = Math.max(0, done - 1);
            case REDONE -> done = Math.min(steps.size(), done + 1);
        }
        writing = null;
        known.putAll(line.after());
    }
}
