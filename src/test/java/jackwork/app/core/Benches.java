package jackwork.app.core;

import java.nio.file.Path;

/**
 * Workbenches that know what any of them has worked out in this process: the same files at the same place say the same, so
 * tests of what the page does need not work out the demo once for each. Not for tests of the working out itself.
 */
public final class Benches {

    private static final int KEPT = 40;
    private static final Once<Workbench.State, Shown> KNOWN = new Once<>(KEPT, Workbench.LONGEST);
    private static final Reads READ = new Reads();

    private Benches() {}

    public static Workbench at(Path workshop) {
        return new Workbench(workshop, Workbench.LONGEST, KNOWN, READ);
    }
}
