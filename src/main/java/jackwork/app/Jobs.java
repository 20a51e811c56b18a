package jackwork.app;

import org.jspecify.annotations.Nullable;

/** Long work for the page, one piece at a time: a new one takes the place of the one before. */
public final class Jobs {

    private final Workbench workbench;
    private int last;
    private @Nullable Job now;

    public Jobs(Workbench workbench) {
        this.workbench = workbench;
    }

    /** @param body a {@link ForPieces} */
    public String piecesJson(String id, String body) {
        return begin(BuildsJob.of(workbench, id, Requests.read(body, ForPieces.class)));
    }

    /** @param body a {@link ForTuning} */
    public String tuneJson(String id, String body) {
        return begin(TuneJob.of(workbench, id, Requests.read(body, ForTuning.class)));
    }

    synchronized String begin(Job job) {
        close();
        now = job;
        job.start(++last, workbench.faces());
        return Json.compact(job.view());
    }

    /** How the work stands. */
    public synchronized String viewJson(int number) {
        return Json.compact(find(number).view());
    }

    /** Stops the work. */
    public synchronized String stopJson(int number) {
        Job job = find(number);
        job.stop();
        return Json.compact(job.view());
    }

    /** Ends whatever is under way. */
    public synchronized void close() {
        Job before = now;
        if (before != null) {
            before.end();
        }
    }

    private Job find(int number) {
        Job job = now;
        if (job == null || job.number() != number) {
            throw new BadRequestException("that work was taken off the bench; other work took its place");
        }
        return job;
    }
}
