package jackwork.app.core;

import jackwork.bench.BenchException;
import jackwork.builds.BuildReport;
import jackwork.builds.Tune;
import jackwork.design.DesignException;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One piece of long work in its own thread; its state is read from any other. A kind of work is one file. */
public abstract class Job {

    /** Of work on all cores. */
    public static final int THREADS = Runtime.getRuntime().availableProcessors();

    /** Older lines are forgotten. */
    private static final int MOST_LINES = 200;

    private final String design;
    private final String version;
    private final int size;
    private final List<String> said = new ArrayList<>();
    private int number;
    private volatile int done;
    private volatile JobView.State state = JobView.State.RUNNING;
    private volatile String problem = "";
    private volatile @Nullable Thread thread;
    private volatile Faces.@Nullable Pace pace;

    /**
     * @param design its id
     * @param version of the files that it works on
     * @param size 0 where it cannot be told beforehand
     */
    public Job(String design, String version, int size) {
        this.design = design;
        this.version = version;
        this.size = size;
    }

    /** What it does; an interrupt ends it. */
    protected abstract void work() throws InterruptedException, IOException;

    /** What came of virtual builds so far. */
    protected Optional<BuildReport> builds() {
        return Optional.empty();
    }

    /** Better numbers that it found. */
    protected Optional<Tune.Proposal> proposal() {
        return Optional.empty();
    }

    /** A pack that it made. */
    protected Optional<JobView.Packed> packed() {
        return Optional.empty();
    }

    protected final int number() {
        return number;
    }

    /** @param faces who goes first */
    final void start(int as, Faces faces) {
        number = as;
        pace = faces.new Pace(THREADS);
        Thread worker = new Thread(this::run, "job " + as);
        worker.setDaemon(true);
        thread = worker;
        worker.start();
    }

    private void run() {
        try {
            work();
            state = JobView.State.DONE;
        } catch (InterruptedException e) {
            state = JobView.State.STOPPED;
        } catch (DesignException | MechanismException | PartException | MakeException | BenchException e) {
            fail(String.valueOf(e.getMessage()));
        } catch (IOException | UncheckedIOException e) {
            fail("a file could not be read or written: " + e.getMessage());
        } catch (RuntimeException e) {
            fail("our own fault: " + e);
        }
    }

    /** Unless it failed because it was stopped. */
    private void fail(String why) {
        boolean stopped = Thread.currentThread().isInterrupted();
        problem = stopped ? "" : why;
        state = stopped ? JobView.State.STOPPED : JobView.State.FAILED;
    }

    /** As asked at the page; work whose best so far is of use takes that. */
    public void stop() {
        end();
    }

    /** Ends it at once. */
    public void end() {
        Thread worker = thread;
        if (worker != null) {
            worker.interrupt();
        }
    }

    /** So far, never less than before. */
    protected final void reached(int count) {
        done = Math.max(done, count);
    }

    /** Between two pieces of the work, from any of its threads: leaves room for those who wait at the page. */
    protected final void giveWay() {
        Faces.Pace own = pace;
        if (own != null) {
            own.next();
        }
    }

    /** So far, and leaves room for those who wait at the page. */
    protected final void made(int count) {
        reached(count);
        giveWay();
    }

    protected final synchronized void say(String line) {
        said.add(line);
        if (said.size() > MOST_LINES) {
            said.remove(0);
        }
    }

    private synchronized List<String> lines() {
        return List.copyOf(said);
    }

    final JobView view() {
        JobView.State now = state;
        return new JobView(
                number,
                design,
                version,
                now,
                problem,
                done,
                size,
                lines(),
                builds().map(ReportMaker::builds).orElse(null),
                proposal().map(JobView.Proposal::of).orElse(null),
                packed().orElse(null));
    }
}
