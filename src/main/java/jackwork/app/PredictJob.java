package jackwork.app;

import jackwork.bench.RevisionName;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import java.time.Instant;

/** Virtual builds of a frozen design; what becomes of them is logged when all are done, and not when they are stopped. */
final class PredictJob extends BuildsJob {

    private final Bench bench;
    private final RevisionName name;

    PredictJob(Bench bench, RevisionName name, BuildRun run) {
        super(name.design(), "", run);
        this.bench = bench;
        this.name = name;
    }

    @Override
    void done(BuildReport report) {
        bench.keep(name, report, Instant.now());
    }
}
