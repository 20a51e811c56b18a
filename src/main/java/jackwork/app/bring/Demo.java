package jackwork.app.bring;

import jackwork.app.core.Aside;
import jackwork.app.wire.UnknownDesignException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The demo workshop that comes with Jackwork, and copies of it. */
public final class Demo {

    private Demo() {}

    /** The folder that came with this Jackwork; never written to. */
    public static Path original() throws IOException {
        Path home = Path.of(System.getProperty("jackwork.home", ""));
        Path demo = home.resolve("demo").toAbsolutePath().normalize();
        if (!Files.isDirectory(demo)) {
            throw new NoSuchFileException(
                    demo.toString(), null, "the demo workshop should stand here; start Jackwork by ./jackwork");
        }
        return demo;
    }

    /** A copy to play with, made when it is not there yet: whole or not at all. */
    public static Path copy(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            Aside.copy(original(), folder);
        }
        return folder;
    }

    /**
     * A new design folder from one of the demo's, its box and figure files copied with their drawings.
     *
     * @param workshop folder that it goes into
     * @throws UnknownDesignException when the demo has no such example
     */
    public static Path newDesign(Path workshop, String name, String example) throws IOException {
        return NewDesign.make(original(), workshop, name, example);
    }
}
