package jackwork.app.core;

import java.io.UncheckedIOException;
import java.net.URI;

/**
 * Something that can serve the page. The command line finds it as a service, so that the two faces
 * need not know each other.
 */
public interface PageHost {

    /** A page being served. */
    interface Running {

        /** Lets in whoever opens it, and nobody else. */
        URI address();

        void stop();
    }

    /** Where the page usually is: one that waits for Jackwork to be started again finds it there. */
    int USUAL_PORT = 8473;

    /** @param port 0 for any that is free */
    Running serve(Workbench workbench, int port);

    /** At the usual port, or any that is free where that is taken. */
    default Running serve(Workbench workbench) {
        try {
            return serve(workbench, USUAL_PORT);
        } catch (UncheckedIOException e) {
            return serve(workbench, 0);
        }
    }
}
