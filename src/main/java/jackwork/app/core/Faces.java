package jackwork.app.core;

/**
 * Those who wait at the page right now. Long work leaves them room: between two of its pieces all but one of its threads
 * wait until nobody does, but never for long.
 */
public final class Faces {

    /** So that long work gets on however busy the page is, ms. */
    private static final long MOST = 2000;

    private int waiting;

    public synchronized void come() {
        waiting++;
    }

    public synchronized void leave() {
        waiting--;
        if (waiting == 0) {
            notifyAll();
        }
    }

    /** How many wait. */
    public synchronized int waiting() {
        return waiting;
    }

    /** The threads of one piece of long work. */
    final class Pace {
        private int going;

        Pace(int threads) {
            this.going = threads;
        }

        /** Asked by each of them between two pieces. */
        void next() {
            synchronized (Faces.this) {
                if (waiting == 0 || going <= 1) {
                    return;
                }
                going--;
                try {
                    long until = System.nanoTime() + MOST * 1_000_000;
                    for (long left = MOST; waiting > 0 && left > 0; left = (until - System.nanoTime()) / 1_000_000) {
                        Faces.this.wait(left);
                    }
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } finally {
                    going++;
                }
            }
        }
    }
}
