package jackwork.fuzz;

import jackwork.DemoCopy;
import jackwork.app.bring.Bringing;
import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import java.io.IOException;
import java.nio.file.Path;

/** A workshop on whose page files are dropped. */
final class Dropped {

    private final Path workshop;
    private final Bringing bringing;

    Dropped(String name) {
        try {
            this.workshop = DemoCopy.at(Reading.folder(name));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        Workbench workbench = new Workbench(workshop);
        this.bringing = new Bringing(workbench, new Editor(workbench));
    }

    Path workshop() {
        return workshop;
    }

    void read(String file, byte[] bytes) {
        bringing.readJson(file, bytes, 1);
    }
}
