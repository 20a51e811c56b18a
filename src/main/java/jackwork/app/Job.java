package jackwork.app;

import jackwork.bench.BenchException;
import jackwork.builds.BuildReport;
import jackwork.builds.Tune;
import jackwork.design.DesignException;
import jackwork.motion.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One piece of long work in its own thread; its state is read from any other. A kind of work is a file like this. */
abstract class Job {

    final String design;
    final String version;
    final int size;
    volatile int done;
    volatile JobView.State state = JobView.State.RUNNING;
    volatile String problem = "";
    private final List<String> said = new ArrayList<>();
    private volatile int number;
    private volatile @Nullable Thread thread;

    /**
     * @param version of the files that it works on
     * @param size 0 where it cannot be told beforehand
     */
    Job(String design, String version, int size) {
        this.design = design;
        this.version = version;
        this.size = size;
    }

    abstract void work() throws InterruptedException, IOException;

    Optional<BuildReport> builds() {
        return Optional.empty();
    }

    Optional<Tune.Proposal> proposal() {
        return Optional.empty();
    }

    int number() {
        return number;
    }

    void start(int itsNumber) {
        number = itsNumber;
        Thread worker = new Thread(this::run, "job " + itsNumber);
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
        } catch (DesignException | MechanismException | PartException | BenchException | IOException e) {
            problem = String.valueOf(e.getMessage());
            state = JobView.State.FAILED;
        } catch (RuntimeException e) {
            boolean stopped = Thread.currentThread().isInterrupted();
            problem = stopped ? "" : "our own fault: " + e;
            state = stopped ? JobView.State.STOPPED : JobView.State.FAILED;
        }
    }

    void stop() {
        Thread worker = thread;
        if (worker != null) {
            worker.interrupt();
        }
    }

    synchronized void say(String line) {
        said.add(line);
        done++;
    }

    synchronized List<String> lines() {
        return List.copyOf(said);
    }
}
