package jackwork.app;

import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.builds.FreeNumber;
import jackwork.builds.Tune;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Long work for the page, one piece at a time: a new one takes the place of the one before. */
public final class Jobs {

    private static final int MOST_BUILDS = 20_000;
    /** On which a proposal's before and after are told. */
    private static final int TOLD = 100;

    private final Workbench workbench;
    private int last;
    private @Nullable Job now;

    public Jobs(Workbench workbench) {
        this.workbench = workbench;
    }

    /** Virtual builds. */
    private static final class Pieces extends Job {
        private final BuildRun run;

        Pieces(String design, String version, BuildRun run) {
            super(design, version, run.size());
            this.run = run;
        }

        @Override
        void work() throws InterruptedException {
            run.run(Runtime.getRuntime().availableProcessors(), count -> done = Math.max(done, count));
        }

        @Override
        Optional<BuildReport> builds() {
            return run.soFar();
        }

        @Override
        void stop() {
            run.cancel();
            super.stop();
        }
    }

    /** The search for better numbers. */
    private static final class Search extends Job {
        private final Tune tune;
        private volatile Tune.@Nullable Proposal found;

        Search(Design design, String version, String id, List<FreeNumber> free, long seed) {
            super(id, version, 0);
            int threads = Runtime.getRuntime().availableProcessors();
            this.tune = new Tune(design.folder(), free, seed, threads, this::say);
        }

        @Override
        void work() throws InterruptedException {
            found = tune.run(TOLD);
        }

        @Override
        Optional<Tune.Proposal> proposal() {
            return Optional.ofNullable(found);
        }
    }

    /** @param body a {@link ForPieces} */
    public synchronized String piecesJson(String id, String body) {
        ForPieces request = Requests.read(body, ForPieces.class);
        if (request.builds() < 10 || request.builds() > MOST_BUILDS) {
            throw new BadRequestException("read " + request.builds() + " pieces, expected 10 to " + MOST_BUILDS);
        }
        Design design = workbench.design(id);
        Subject subject = Subject.asNumbered(design);
        BuildRun run = DesignCheck.builds(subject, request.builds(), request.seed());
        return begin(new Pieces(id, DesignFiles.of(design).version(), run));
    }

    /** @param body a {@link ForTuning} */
    public synchronized String tuneJson(String id, String body) {
        ForTuning request = Requests.read(body, ForTuning.class);
        List<FreeNumber> free = new ArrayList<>();
        for (ForTuning.Free number : request.free()) {
            if (!(number.low() < number.high())) {
                throw new BadRequestException("read " + number.low() + " to " + number.high() + " for " + number.path()
                        + ", expected the lower one first");
            }
            free.add(new FreeNumber(number.path(), number.low(), number.high()));
        }
        if (free.isEmpty() || free.size() > 4) {
            throw new BadRequestException("expected one to four numbers that may change");
        }
        Design design = workbench.design(id);
        return begin(new Search(design, DesignFiles.of(design).version(), id, free, request.seed()));
    }

    /** Takes the place of whatever ran before. */
    synchronized String begin(Job job) {
        Job before = now;
        if (before != null) {
            before.stop();
        }
        now = job;
        job.start(++last);
        return view(job);
    }

    /** How the work stands. */
    public synchronized String viewJson(int number) {
        return view(find(number));
    }

    /** Stops the work. */
    public synchronized String stopJson(int number) {
        Job job = find(number);
        job.stop();
        return view(job);
    }

    private Job find(int number) {
        Job job = now;
        if (job == null || job.number() != number) {
            throw new BadRequestException("that work was taken off the bench; other work took its place");
        }
        return job;
    }

    private static String view(Job job) {
        Report.Builds builds = job.builds().map(ReportMaker::builds).orElse(null);
        return Json.compact(new JobView(
                job.number(),
                job.design,
                job.version,
                job.state,
                job.problem,
                job.done,
                job.size,
                job.lines(),
                builds,
                job.proposal().map(Jobs::proposal).orElse(null)));
    }

    private static JobView.Proposal proposal(Tune.Proposal proposal) {
        List<JobView.Proposed> numbers = new ArrayList<>();
        for (Map.Entry<String, Double> number : proposal.numbers().entrySet()) {
            numbers.add(new JobView.Proposed(number.getKey(), number.getValue()));
        }
        return new JobView.Proposal(
                numbers, ReportMaker.builds(proposal.before()), ReportMaker.builds(proposal.after()));
    }
}
