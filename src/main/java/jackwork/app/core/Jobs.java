package jackwork.app.core;

import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import org.jspecify.annotations.Nullable;

/** Long work for the page, one piece at a time: a new one takes the place of the one before. */
public final class Jobs {

    private final Faces faces;
    private int last;
    private @Nullable Job now;

    public Jobs(Faces faces) {
        this.faces = faces;
    }

    public synchronized String begin(Job job) {
        close();
        now = job;
        job.start(++last, faces);
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
