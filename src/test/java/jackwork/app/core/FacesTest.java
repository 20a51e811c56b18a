package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Long work leaves room for those who wait at the page. */
class FacesTest {

    @Test
    void allThreadsButOneWaitWhileSomebodyWaitsAtThePage() throws Exception {
        Faces faces = new Faces();
        Faces.Pace pace = faces.new Pace(3);
        AtomicInteger passed = new AtomicInteger();
        CountDownLatch all = new CountDownLatch(3);
        faces.come();
        for (int i = 0; i < 3; i++) {
            new Thread(() -> {
                        pace.next();
                        passed.incrementAndGet();
                        all.countDown();
                    })
                    .start();
        }
        long until = System.nanoTime() + 500_000_000L;
        while (System.nanoTime() < until) {
            assertThat(passed.get()).isLessThanOrEqualTo(1);
            Thread.sleep(10);
        }
        faces.leave();
        all.await();
        assertThat(passed).hasValue(3);
    }

    @Test
    void nobodyWaitsWhereThePageDoesNot() {
        Faces faces = new Faces();
        Faces.Pace pace = faces.new Pace(2);
        long began = System.nanoTime();
        pace.next();
        pace.next();
        assertThat(System.nanoTime() - began).isLessThan(1_000_000_000L);
        assertThat(faces.waiting()).isZero();
    }
}
