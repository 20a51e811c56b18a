package jackwork.app;

import jackwork.bench.RevisionName;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;

/** Virtual builds of a frozen design; what becomes of them is logged when all are done, and not when they are stopped. */
final class PredictJob extends Job {

    private final Bench bench;
    private final RevisionName name;
    private final BuildRun run;

    PredictJob(Bench bench, RevisionName name, BuildRun run) {
        super(name.design(), "", run.size());
        this.bench = bench;
        this.name = name;
        this.run = run;
    }

    @Override
    void work() throws InterruptedException, IOException {
        BuildReport report = run.run(Runtime.getRuntime().availableProcessors(), this::reached);
        bench.keep(name, report, Instant.now());
    }

    @Override
    Optional<BuildReport> builds() {
        return run.soFar();
    }

    @Override
    void end() {
        run.cancel();
        super.end();
    }
}
