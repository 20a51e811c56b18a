package jackwork.app.core;

import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import java.util.Optional;
import java.util.function.Consumer;

/** Virtual builds. */
public final class BuildsJob extends Job {

    private final BuildRun run;
    private final Consumer<BuildReport> done;

    /** @param done told when all are made, and not when they are stopped */
    public BuildsJob(String id, String version, BuildRun run, Consumer<BuildReport> done) {
        super(id, version, run.size());
        this.run = run;
        this.done = done;
    }

    @Override
    protected void work() throws InterruptedException {
        done.accept(run.run(THREADS, this::made));
    }

    @Override
    protected Optional<BuildReport> builds() {
        return run.soFar();
    }

    @Override
    public void end() {
        run.cancel();
        super.end();
    }
}
