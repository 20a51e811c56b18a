package jackwork.web;

import java.io.IOException;
import java.time.Duration;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.LowResourceMonitor;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** One address of this machine that is listened at, HTTP/1.1 and nothing else. */
final class Listening {

    /** Threads: each answer that is worked out has one, and more wait than work. */
    private static final int MOST_THREADS = 250;

    private static final int LEAST_THREADS = 8;
    /** How long a thread that has nothing to do is kept, ms. */
    private static final int IDLE_THREAD = 60_000;

    private final Server server;
    private final ServerConnector connector;

    private Listening(Server server, ServerConnector connector) {
        this.server = server;
        this.connector = connector;
    }

    /**
     * @param port 0 for any that is free
     * @param patience how long the head of a request may take
     * @throws IOException when nobody may listen there, or somebody does already
     */
    static Listening at(String host, int port, Handler handler, Duration patience) throws IOException {
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, LEAST_THREADS, IDLE_THREAD);
        threads.setName("page");
        Server server = new Server(threads);
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(configuration()));
        connector.setHost(host);
        connector.setPort(port);
        server.addConnector(connector);
        // Hangs up sooner on whoever is idle while threads are short.
        server.addBean(new LowResourceMonitor(server));
        SlowClients.refuse(server, handler, patience);
        Listening listening = new Listening(server, connector);
        try {
            server.start();
            return listening;
        } catch (Exception e) {
            listening.stop();
            if (e instanceof IOException refused) {
                throw refused;
            }
            throw new IllegalStateException("the page's server does not start", e);
        }
    }

    private static HttpConfiguration configuration() {
        HttpConfiguration configuration = new HttpConfiguration();
        // A design's folder and name have a slash between them, which some programs send as %2F. No path leads to a
        // file.
        configuration.setUriCompliance(UriCompliance.LEGACY);
        configuration.setSendServerVersion(false);
        return configuration;
    }

    int port() {
        return connector.getLocalPort();
    }

    void stop() {
        try {
            server.stop();
        } catch (Exception e) {
            throw new IllegalStateException("the page's server does not stop", e);
        }
    }
}
