package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.app.wire.TooLongException;
import jackwork.geometry.Wanted;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is worked out for several is worked out once, for nobody not at all, and never keeps anybody else waiting. */
class OnceTest {

    private static final Duration LONG = Duration.ofMinutes(1);

    private final ExecutorService askers = Executors.newCachedThreadPool();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean mayEnd;

    @AfterEach
    void end() {
        mayEnd = true;
        askers.shutdownNow();
    }

    /** Computes until it may end, or nobody wants it. */
    private String compute() {
        begun.countDown();
        try {
            while (!mayEnd) {
                Wanted.goOn();
                Thread.onSpinWait();
            }
            return "done";
        } finally {
            ended.countDown();
        }
    }

    @Test
    void twoWhoAskForTheSameGetOneAnswer() throws Exception {
        Once<String, String> once = new Once<>(2, LONG);
        AtomicInteger times = new AtomicInteger();
        CountDownLatch both = new CountDownLatch(2);
        List<Future<String>> answers =
                List.of(askers.submit(() -> asked(once, times, both)), askers.submit(() -> asked(once, times, both)));
        assertThat(both.await(20, TimeUnit.SECONDS)).isTrue();
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
        mayEnd = true;
        assertThat(answers.get(0).get()).isEqualTo("done");
        assertThat(answers.get(1).get()).isEqualTo("done");
        assertThat(once.of("heron", () -> "again")).isEqualTo("done");
        assertThat(times).hasValue(1);
    }

    private String asked(Once<String, String> once, AtomicInteger times, CountDownLatch both) {
        both.countDown();
        return once.of("heron", () -> {
            times.incrementAndGet();
            return compute();
        });
    }

    @Test
    void whoAsksForAnotherThingDoesNotWait() throws Exception {
        Once<String, String> once = new Once<>(2, LONG);
        Future<String> windmill = askers.submit(() -> once.of("windmill", this::compute));
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
        assertThat(once.of("heron", () -> "heron")).isEqualTo("heron");
        assertThat(windmill.isDone()).isFalse();
    }

    @Test
    void itGoesOnAsLongAsOneStillWaitsAndEndsWithTheLast() throws Exception {
        Once<String, String> once = new Once<>(2, LONG);
        Thread one = asker(once);
        assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
        Thread other = asker(once);
        while (other.getState() != Thread.State.TIMED_WAITING) {
            Thread.onSpinWait();
        }
        one.interrupt();
        one.join();
        assertThat(ended.await(300, TimeUnit.MILLISECONDS)).isFalse();
        other.interrupt();
        assertThat(ended.await(20, TimeUnit.SECONDS)).isTrue();
        assertThat(once.known("heron")).isEmpty();
    }

    private Thread asker(Once<String, String> once) {
        Thread asker = new Thread(() ->
                assertThatThrownBy(() -> once.of("heron", this::compute)).isInstanceOf(CancellationException.class));
        asker.start();
        return asker;
    }

    @Test
    void nobodyWaitsLongerThanTheLongest() throws Exception {
        Once<String, String> once = new Once<>(2, Duration.ofMillis(50));
        assertThatThrownBy(() -> once.of("heron", this::compute))
                .isInstanceOf(TooLongException.class)
                .hasMessageContaining("50 ms");
        assertThat(ended.await(20, TimeUnit.SECONDS)).isTrue();
    }

    @Test
    void whatFailsIsToldAsItIsAndTriedAgain() {
        Once<String, String> once = new Once<>(2, LONG);
        IllegalStateException fault = new IllegalStateException("no such sheet");
        assertThatThrownBy(() -> once.of("heron", () -> {
                    throw fault;
                }))
                .isSameAs(fault);
        assertThat(once.of("heron", () -> "mended")).isEqualTo("mended");
    }
}
