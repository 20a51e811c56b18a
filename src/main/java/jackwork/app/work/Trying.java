package jackwork.app.work;

import jackwork.app.core.BuildsJob;
import jackwork.app.core.DesignCheck;
import jackwork.app.core.Jobs;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Requests;
import jackwork.builds.BuildRun;
import jackwork.check.Subject;
import jackwork.design.Design;

/** Long work on whether it works: many pieces made, better numbers sought. */
public final class Trying {

    private static final int MOST_BUILDS = 20_000;

    private final Workbench workbench;
    private final Jobs jobs;

    public Trying(Workbench workbench, Jobs jobs) {
        this.workbench = workbench;
        this.jobs = jobs;
    }

    /** @param body a {@link ForPieces} */
    public String piecesJson(String id, String body) {
        ForPieces request = Requests.read(body, ForPieces.class);
        if (request.builds() < 10 || request.builds() > MOST_BUILDS) {
            throw new BadRequestException("read " + request.builds() + " pieces, expected 10 to " + MOST_BUILDS);
        }
        Design design = workbench.design(id);
        BuildRun run = DesignCheck.builds(Subject.asNumbered(design), request.builds(), request.seed());
        return jobs.begin(new BuildsJob(id, design.version(), run, report -> {}));
    }

    /** @param body a {@link ForTuning} */
    public String tuneJson(String id, String body) {
        return jobs.begin(TuneJob.of(workbench, id, Requests.read(body, ForTuning.class)));
    }
}
