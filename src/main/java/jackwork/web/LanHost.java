package jackwork.web;

import jackwork.app.bench.PhoneHost;
import jackwork.app.bench.PhoneLog;
import java.net.InetAddress;
import java.net.URI;
import java.time.Clock;
import java.util.List;

/** Offers {@link PhoneServer} as a service. */
public final class LanHost implements PhoneHost {

    @Override
    public Running serve(PhoneLog log, InetAddress address, int port) {
        PhoneServer server = PhoneServer.start(log, address, port, Clock.systemUTC());
        return new Running() {
            @Override
            public URI link() {
                return server.link();
            }

            @Override
            public boolean open() {
                return server.open();
            }

            @Override
            public List<Guest> guests() {
                return server.guests();
            }

            @Override
            public void stop() {
                server.stop();
            }
        };
    }
}
