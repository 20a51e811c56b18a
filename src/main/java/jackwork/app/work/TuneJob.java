package jackwork.app.work;

import jackwork.app.core.Job;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.builds.FreeNumber;
import jackwork.builds.Tune;
import jackwork.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The search for better numbers. */
public final class TuneJob extends Job {

    private static final int MOST_NUMBERS = 4;
    /** On which a proposal's before and after are told. */
    private static final int TOLD = 100;

    private final Tune tune;
    private int tried;
    private volatile Tune.@Nullable Proposal found;

    private TuneJob(String id, Design design, List<FreeNumber> free, long seed) {
        super(id, design.version(), 0);
        this.tune = new Tune(design.folder(), free, seed, THREADS, this::told, this::giveWay);
    }

    public static TuneJob of(Workbench workbench, String id, ForTuning request) {
        List<FreeNumber> free = new ArrayList<>();
        for (ForTuning.Free number : request.free()) {
            if (!(number.low() < number.high())) {
                throw new BadRequestException("read " + number.low() + " to " + number.high() + " for " + number.path()
                        + ", expected the lower one first");
            }
            free.add(new FreeNumber(number.path(), number.low(), number.high()));
        }
        if (free.isEmpty() || free.size() > MOST_NUMBERS) {
            throw new BadRequestException("expected one to four numbers that may change");
        }
        return new TuneJob(id, workbench.design(id), free, request.seed());
    }

    private synchronized void told(String line) {
        say(line);
        reached(++tried);
    }

    @Override
    protected void work() throws InterruptedException {
        found = tune.run(TOLD);
    }

    @Override
    protected Optional<Tune.Proposal> proposal() {
        return Optional.ofNullable(found);
    }
}
