package jackwork.app.bench;

import jackwork.app.core.PageHost;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.URI;
import java.time.Instant;
import java.util.List;

/** Something that lets a phone log, in this house's network; found as a service, as {@link PageHost} is. */
public interface PhoneHost {

    /** A phone that was let in. */
    record Guest(Instant since, Instant until) {}

    /** A phone's page being served. */
    interface Running {

        /** An address that lets one phone in, once, within ten minutes. Each call makes a new one and voids the last. */
        URI link();

        /** Whether the last link still lets one in. */
        boolean open();

        /** The phones that are in. */
        List<Guest> guests();

        void stop();
    }

    /** Where a phone usually finds it: what waits on a phone is kept by address and port. */
    int USUAL_PORT = 8474;

    /**
     * @param address of this machine, to be reached at
     * @param port 0 for any that is free
     */
    Running serve(PhoneLog log, InetAddress address, int port);

    /** At the usual port, or any that is free where that is taken. */
    default Running serve(PhoneLog log, InetAddress address) {
        try {
            return serve(log, address, USUAL_PORT);
        } catch (UncheckedIOException e) {
            return serve(log, address, 0);
        }
    }
}
