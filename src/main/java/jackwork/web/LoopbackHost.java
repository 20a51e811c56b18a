package jackwork.web;

import jackwork.app.core.PageHost;
import jackwork.app.core.Workbench;
import java.net.URI;

/** Offers {@link PageServer} as a service. */
public final class LoopbackHost implements PageHost {

    @Override
    public Running serve(Workbench workbench, int port) {
        PageServer server = PageServer.start(workbench, port);
        return new Running() {
            @Override
            public URI address() {
                return server.address();
            }

            @Override
            public void stop() {
                server.stop();
            }
        };
    }
}
