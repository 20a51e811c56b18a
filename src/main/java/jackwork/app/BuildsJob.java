package jackwork.app;

import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import java.util.Optional;

/** Virtual builds. */
class BuildsJob extends Job {

    private static final int MOST_BUILDS = 20_000;

    private final BuildRun run;

    BuildsJob(String id, String version, BuildRun run) {
        super(id, version, run.size());
        this.run = run;
    }

    static BuildsJob of(Workbench workbench, String id, ForPieces request) {
        if (request.builds() < 10 || request.builds() > MOST_BUILDS) {
            throw new BadRequestException("read " + request.builds() + " pieces, expected 10 to " + MOST_BUILDS);
        }
        Design design = workbench.design(id);
        Subject subject = Subject.asNumbered(design);
        BuildRun run = DesignCheck.builds(subject, request.builds(), request.seed());
        return new BuildsJob(id, DesignFiles.of(design).version(), run);
    }

    @Override
    void work() throws InterruptedException {
        done(run.run(THREADS, this::made));
    }

    /** All are made: what becomes of them. */
    void done(BuildReport report) {
        // They are looked at as they are.
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
