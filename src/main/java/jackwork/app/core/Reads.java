package jackwork.app.core;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Designs as they were read last: each is read anew when one of its files says something else by now, or lies elsewhere. */
final class Reads {

    private final Map<Path, Read> known = new ConcurrentHashMap<>();

    private record Read(Design design, List<Path> places) {

        boolean still() {
            DesignFiles files = DesignFiles.of(design);
            return files.places().equals(places) && files.version().equals(design.version());
        }
    }

    /**
     * @param folder of a design
     * @throws DesignException when its files cannot be used as they are
     */
    Design of(Path folder) {
        Read last = known.get(folder);
        if (last != null && last.still()) {
            return last.design();
        }
        known.remove(folder);
        Design design = DesignReader.read(folder);
        known.put(folder, new Read(design, DesignFiles.of(design).places()));
        return design;
    }
}
