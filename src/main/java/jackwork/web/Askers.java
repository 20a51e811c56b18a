package jackwork.web;

import jackwork.app.core.Faces;
import jackwork.app.wire.TooLongException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.eclipse.jetty.http.HttpStatus;
import org.jspecify.annotations.Nullable;

/**
 * Everyone who waits for an answer. A question whose asker hung up, or that takes longer than anybody waits, is dropped: its
 * thread is interrupted, which computing looks for. A request that saves something is never dropped.
 */
final class Askers implements AutoCloseable {

    private static final String ASKER = "asker";
    /** ms. */
    private static final long LOOK_EVERY = 200;
    /** Whoever closes one direction does so with the last of the request; who hangs up after that is gone, ns. */
    private static final long HALF_CLOSED = 250_000_000;

    /** Sent with a body, and yet only asking. */
    private static final Pattern ASKING =
            Pattern.compile("/api/(glimpse/.*|bring|bring/attempt|redrawn/.*|pay/.*|bench/measured)");

    private final Faces faces;
    private final Duration longest;
    private final Set<Asker> all = ConcurrentHashMap.newKeySet();
    private final Thread watch = new Thread(this::watch, "askers");

    Askers(Faces faces, Duration longest) {
        this.faces = faces;
        this.longest = longest;
        watch.setDaemon(true);
        watch.start();
    }

    private void watch() {
        try {
            while (true) {
                Thread.sleep(LOOK_EVERY);
                all.forEach(this::look);
            }
        } catch (InterruptedException e) {
            // The page is served no more.
        }
    }

    private enum Dropped {
        GONE,
        TOO_LONG
    }

    private static final class Asker {
        private final Thread thread = Thread.currentThread();
        private final long began = System.nanoTime();
        /** Null where it is not looked at. */
        private volatile @Nullable SocketChannel channel;

        private volatile @Nullable Dropped dropped;
        private volatile boolean mustClose;
        /** Whether it was found open so late that it closed nothing with its request. */
        private volatile boolean listens;

        private boolean answered;

        Asker(@Nullable SocketChannel channel) {
            this.channel = channel;
        }

        private synchronized void drop(Dropped why) {
            if (!answered && dropped == null) {
                dropped = why;
                thread.interrupt();
            }
        }

        private synchronized void answered() {
            answered = true;
            // The thread's next request is not to be taken for this one.
            Thread.interrupted();
        }
    }

    void come(Exchange exchange) {
        faces.come();
        boolean reads = exchange.method().equals("GET");
        Asker asker = new Asker(reads ? channel(exchange) : null);
        exchange.setAttribute(ASKER, asker);
        if (reads || ASKING.matcher(exchange.path()).matches()) {
            all.add(asker);
        }
    }

    void leave(Exchange exchange) {
        if (!(exchange.attribute(ASKER) instanceof Asker asker)) {
            return;
        }
        faces.leave();
        all.remove(asker);
        asker.answered();
        if (asker.mustClose) {
            exchange.setHeader("Connection", "close");
        }
        if (asker.dropped == Dropped.TOO_LONG && exchange.status() >= 400) {
            refuse(exchange, new TooLongException(longest));
        }
    }

    static void refuse(Exchange exchange, TooLongException e) {
        Answers.refuse(
                exchange,
                HttpStatus.SERVICE_UNAVAILABLE_503,
                e.getMessage(),
                "Nothing was changed. Is the machine busy with other things? Then try again. Outlines of very many points"
                        + " take long as well.");
    }

    /** Whether what went wrong is only that it was dropped. */
    static boolean isDropped(Exchange exchange) {
        return exchange.attribute(ASKER) instanceof Asker asker && asker.dropped != null;
    }

    private void look(Asker asker) {
        long waited = System.nanoTime() - asker.began;
        if (waited > longest.toNanos()) {
            asker.drop(Dropped.TOO_LONG);
        } else if (isGone(asker, waited)) {
            asker.drop(Dropped.GONE);
        }
    }

    /** Nothing is sent after a request before it is answered: to read on tells whether anybody is there. */
    private static boolean isGone(Asker asker, long waited) {
        SocketChannel channel = asker.channel;
        if (channel == null) {
            return false;
        }
        try {
            int read = channel.read(ByteBuffer.allocate(1));
            if (read == 0) {
                if (waited > HALF_CLOSED) {
                    asker.listens = true;
                }
                return false;
            }
            asker.channel = null;
            // A second request that came too early must be sent again, and is: the first one's answer says so.
            asker.mustClose = read > 0;
            return read < 0 && asker.listens;
        } catch (IOException e) {
            asker.channel = null;
            return true;
        }
    }

    /** The connection of a request that has no body, not to be read by anyone else meanwhile. */
    private static @Nullable SocketChannel channel(Exchange exchange) {
        boolean body = exchange.length() > 0 || exchange.header("Transfer-Encoding") != null;
        Object transport = exchange.endPoint().getTransport();
        return !body && transport instanceof SocketChannel channel && !channel.isBlocking() ? channel : null;
    }

    @Override
    public void close() {
        watch.interrupt();
    }
}
