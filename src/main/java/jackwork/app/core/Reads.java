package jackwork.app.core;

import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Designs as they were read last: each is read anew only when one of its files says something else by now. */
final class Reads {

    private final Map<Path, Read> known = new ConcurrentHashMap<>();

    /** @param version of the files that it was read from */
    private record Read(Design design, String version) {}

    /**
     * @param folder of a design
     * @throws DesignException when its files cannot be used as they are
     */
    Design of(Path folder) {
        Read last = known.get(folder);
        if (last != null && DesignFiles.of(last.design()).version().equals(last.version())) {
            return last.design();
        }
        known.remove(folder);
        Design design = DesignReader.read(folder);
        known.put(folder, new Read(design, DesignFiles.of(design).version()));
        return design;
    }
}
