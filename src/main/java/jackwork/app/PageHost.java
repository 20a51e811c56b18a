package jackwork.app;

import java.net.URI;

/**
 * Something that can serve the page. The command line finds it as a service, so that the two faces
 * need not know each other.
 */
public interface PageHost {

    /** A page being served. */
    interface Running {

        URI address();

        void stop();
    }

    /** @param port 0 for any that is free */
    Running serve(Workbench workbench, int port);
}
