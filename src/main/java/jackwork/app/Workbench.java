package jackwork.app;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** A workshop opened for the page. Files are read anew for every answer, so an edit outside is seen at once. */
public final class Workbench {

    private final Path workshop;

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
        if (!ids().contains(id)) {
            throw new UnknownDesignException(id, ids());
        }
        return DesignReader.read(workshop.resolve(id));
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

    private List<String> ids() {
        try {
            return DesignFolders.list(workshop);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String name(String id) {
        try {
            Design design = DesignReader.read(workshop.resolve(id));
            return design.name();
        } catch (DesignException e) {
            return id + " (cannot be read)";
        }
    }
}
