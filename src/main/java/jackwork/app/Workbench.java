package jackwork.app;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A workshop opened for the page. Files are read anew for every answer, so an edit outside is seen at once. */
public final class Workbench {

    /** States of designs whose checks are kept: going back to one costs nothing. */
    private static final int KEPT = 24;

    private final Path workshop;
    private final Map<String, DesignCheck> checks = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, DesignCheck> eldest) {
            return size() > KEPT;
        }
    };

    /** @param workshop the folder with {@code workshop.yaml} */
    public Workbench(Path workshop) {
        this.workshop = workshop.toAbsolutePath().normalize();
    }

    /** Its name and designs: {@code {name, designs: [{id, name}]}}; designs that cannot be read keep their folder's name. */
    public String workshopJson() {
        return Json.compact(new Workshop(WorkshopReader.read(workshop).name(), names()));
    }

    /** Its designs. */
    List<Workshop.DesignName> names() {
        return ids().stream().map(id -> new Workshop.DesignName(id, name(id))).toList();
    }

    /** The folder with {@code workshop.yaml}. */
    Path folder() {
        return workshop;
    }

    /**
     * @throws UnknownDesignException when the workshop has no such design
     * @throws DesignException when its files cannot be used as they are
     */
    Design design(String id) {
        require(id);
        return DesignReader.read(workshop.resolve(id));
    }

    /** @throws UnknownDesignException when the workshop has no such design */
    void require(String id) {
        List<String> ids = ids();
        if (!ids.contains(id)) {
            throw new UnknownDesignException(id, ids);
        }
    }

    /** Every question asked of a design; known already when the same files were asked before. */
    DesignCheck check(Design design, String version) {
        synchronized (checks) {
            DesignCheck known = checks.get(version);
            if (known != null) {
                return known;
            }
        }
        DesignCheck check = DesignCheck.of(design);
        synchronized (checks) {
            checks.put(version, check);
        }
        return check;
    }

    /** Names of the other designs whose figure is that file. */
    List<String> sharing(String id, Path figure) {
        return ids().stream()
                .filter(other -> !other.equals(id))
                .filter(other -> DesignReader.figureOf(workshop.resolve(other))
                        .filter(figure::equals)
                        .isPresent())
                .map(this::name)
                .toList();
    }

    List<String> ids() {
        try {
            return DesignFolders.list(workshop);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String name(String id) {
        try {
            Design design = DesignReader.read(workshop.resolve(id));
            return design.name();
        } catch (DesignException e) {
            return id + " (cannot be read)";
        }
    }
}
