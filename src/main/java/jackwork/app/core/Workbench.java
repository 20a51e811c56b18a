package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.app.wire.UnknownDesignException;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignFolders;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** A workshop opened for the page. Files are looked at anew for every answer, so an edit outside is seen at once. */
public final class Workbench {

    /** States of designs whose checks are kept: going back to one costs nothing. */
    private static final int KEPT = 24;

    /** The heaviest demo takes a tenth of it on two cores; a machine ten times as slow still gets there. */
    public static final Duration LONGEST = Duration.ofMinutes(2);

    private final Path workshop;
    private final Duration longest;
    private final Faces faces = new Faces();
    private final Sharing sharing;
    private final Once<State, Shown> shown;
    private final Reads reads;

    /** @param version of its files */
    record State(Path workshop, String id, String version) {}

    /** @param workshop the folder with {@code workshop.yaml} */
    public Workbench(Path workshop) {
        this(workshop, LONGEST);
    }

    /** @param longest that anything is computed while somebody waits for it */
    public Workbench(Path workshop, Duration longest) {
        this(workshop, longest, new Once<>(KEPT, longest), new Reads());
    }

    /**
     * @param shown what is known of states, by other workbenches too
     * @param reads what was read, likewise
     */
    Workbench(Path workshop, Duration longest, Once<State, Shown> shown, Reads reads) {
        this.workshop = workshop.toAbsolutePath().normalize();
        this.longest = longest;
        this.sharing = new Sharing(this.workshop);
        this.shown = shown;
        this.reads = reads;
    }

    /** How long anything is computed while somebody waits for it. */
    public Duration longest() {
        return longest;
    }

    /** Those who wait at the page. */
    public Faces faces() {
        return faces;
    }

    /** Its name and designs: {@code {name, designs: [{id, name}]}}; designs that cannot be read keep their folder's name. */
    public String workshopJson() {
        return Json.compact(new Workshop(WorkshopReader.read(workshop).name(), names()));
    }

    /** Its designs. */
    public List<Workshop.DesignName> names() {
        return ids().stream().map(id -> new Workshop.DesignName(id, name(id))).toList();
    }

    /** The folder with {@code workshop.yaml}. */
    public Path folder() {
        return workshop;
    }

    /**
     * @throws UnknownDesignException when the workshop has no such design
     * @throws DesignException when its files cannot be used as they are
     */
    public Design design(String id) {
        require(id);
        return reads.of(workshop.resolve(id));
    }

    /** @throws UnknownDesignException when the workshop has no such design */
    void require(String id) {
        List<String> ids = ids();
        if (!ids.contains(id)) {
            throw new UnknownDesignException(id, ids);
        }
    }

    /**
     * All that the page shows of a design as it was read, whatever became of its files since; known already when the same files
     * were asked before.
     */
    public Shown shown(String id, Design design) {
        List<String> sharing = sharing(id, DesignFiles.of(design).figure());
        String version = design.version();
        return shown.of(new State(workshop, id, version), () -> Shown.of(id, version, design, sharing))
                .sharedWith(sharing);
    }

    /** The same of a design as it stands. */
    public Shown shown(String id) {
        Design design = design(id);
        return shown(id, design);
    }

    /** Looks at the first design, which a page shows first, while nobody waits yet: a browser takes its time to start. */
    public void lookAhead() {
        try {
            List<String> ids = ids();
            if (!ids.isEmpty()) {
                shown(ids.get(0));
            }
        } catch (RuntimeException e) {
            // Whoever asks for it is told.
        }
    }

    /** Names of the other designs whose figure is that file. */
    public List<String> sharing(String id, Path figure) {
        return sharing.of(ids().stream().filter(other -> !other.equals(id)).toList(), figure);
    }

    List<String> ids() {
        try {
            return DesignFolders.list(workshop);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public String name(String id) {
        try {
            return reads.of(workshop.resolve(id)).name();
        } catch (DesignException e) {
            return id + " (cannot be read)";
        }
    }
}
