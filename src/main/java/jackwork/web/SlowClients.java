package jackwork.web;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;
import org.eclipse.jetty.util.component.ContainerLifeCycle;
import org.eclipse.jetty.util.component.LifeCycle;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Hangs up on whoever sends a request drop by drop, or calls and says nothing: its head must be whole after some seconds, its
 * body must come at a pace, and no more than so many may be connected at once. The server itself only ends connections that
 * have long been idle.
 */
final class SlowClients implements Connection.Listener {

    /** How long a request's head may take: a page's own is one packet. */
    static final Duration PATIENCE = Duration.ofSeconds(10);

    /** Bytes a second of a body, on the average: the slowest of phones on the worst of networks does better. */
    private static final int SLOWEST_BODY = 200;

    /** A page holds six. */
    private static final int MOST_CONNECTIONS = 200;

    private static final int LOOKS = 4;

    private final long patience;
    private final Map<Connection, Head> open = new ConcurrentHashMap<>();

    /** What was seen of a connection at the last look. */
    private static final class Head {
        private long requests;
        /** Bytes that belong to requests before. */
        private long before;
        /** When a head was first seen under way, or nobody had said anything yet, ns; 0 when neither is so. */
        private long since;
    }

    private SlowClients(Duration patience) {
        this.patience = patience.toNanos();
    }

    /** @param handler of the others' requests */
    static void refuse(Server server, Handler handler, Duration patience) {
        server.setHandler(new MinimumDataRateHandler(handler, SLOWEST_BODY, 0));
        server.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, server));
        SlowClients clients = new SlowClients(patience);
        server.addEventListener(new LifeCycle.Listener() {
            @Override
            public void lifeCycleStarted(LifeCycle event) {
                for (Connector connector : server.getConnectors()) {
                    ((ContainerLifeCycle) connector).addBean(clients);
                }
                clients.lookAgain(server.getScheduler());
            }
        });
    }

    @Override
    public void onOpened(Connection connection) {
        open.put(connection, new Head());
    }

    @Override
    public void onClosed(Connection connection) {
        open.remove(connection);
    }

    private void lookAgain(Scheduler scheduler) {
        if (scheduler.isRunning()) {
            open.forEach(this::look);
            scheduler.schedule(() -> lookAgain(scheduler), patience / LOOKS, TimeUnit.NANOSECONDS);
        }
    }

    private void look(Connection connection, Head head) {
        long requests = connection.getMessagesIn();
        long bytes = connection.getBytesIn();
        if (requests != connection.getMessagesOut() || requests != head.requests) {
            head.requests = requests;
            head.before = bytes;
            head.since = 0;
        } else if (bytes == head.before && requests > 0) {
            head.since = 0;
        } else if (head.since == 0) {
            head.since = System.nanoTime();
        } else if (System.nanoTime() - head.since > patience) {
            connection.close();
        }
    }
}
