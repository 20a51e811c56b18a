package jackwork.app.pay;

import jackwork.app.core.Jobs;
import jackwork.app.core.Once;
import jackwork.app.core.TimedWork;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.app.wire.Requests;
import jackwork.design.Design;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Will it pay? for the page: what a design takes is laid out once for each state of its files, and asked of many times. */
public final class Paying {

    private static final int MOST_PIECES = 1000;
    private static final double MOST_MINUTES = 100_000;
    private static final int MOST_NUMBERS = 60;
    private static final int MOST_BUILDS = 5000;
    /** Designs laid out and kept, the last looked at. */
    private static final int KEPT = 4;

    private record Key(String id, String version, int laidOut) {}

    private final Workbench workbench;
    private final Jobs jobs;
    private final Once<Key, Pricing> kept;

    public Paying(Workbench workbench, Jobs jobs) {
        this.workbench = workbench;
        this.jobs = jobs;
        this.kept = new Once<>(KEPT, workbench.longest());
    }

    /** @param body a {@link ForPay} */
    public String answerJson(String id, String body) {
        ForPay request = Requests.read(body, ForPay.class);
        checkPieces(request.quantity());
        Key key = key(id, request.version(), request.laidOut());
        Pricing pricing = pricing(key);
        List<TimedWork> timed = pricing.timed();
        Pricing.Ask ask = ask(pricing, request, request.supposed() ? List.of() : timed);
        return Json.withAmountsAsText(PayView.of(key.version(), key.laidOut(), pricing, timed, ask));
    }

    /**
     * Runs findings again for quicker ways of making.
     *
     * @param body a {@link ForAgain}
     */
    public String againJson(String id, String body) {
        ForAgain request = Requests.read(body, ForAgain.class);
        Key key = key(id, request.version(), request.laidOut());
        return jobs.begin(new AgainJob(id, key.version(), pricing(key)));
    }

    /**
     * Draws virtual builds for the share of good pieces.
     *
     * @param body a {@link ForDrawing}
     */
    public String drawJson(String id, String body) {
        ForDrawing request = Requests.read(body, ForDrawing.class);
        if (request.builds() < 10 || request.builds() > MOST_BUILDS) {
            throw new BadRequestException("read " + request.builds() + " builds, expected 10 to " + MOST_BUILDS);
        }
        Key key = key(id, request.version(), request.laidOut());
        return jobs.begin(new DrawJob(id, key.version(), pricing(key), request.builds(), request.seed()));
    }

    /** What is laid out already needs no look at its files: the page finds out by itself when they change. */
    private Key key(String id, String version, int laidOut) {
        checkPieces(laidOut);
        Key known = new Key(id, version, laidOut);
        if (kept.known(known).isPresent()) {
            return known;
        }
        Design design = workbench.design(id);
        return new Key(id, design.version(), laidOut);
    }

    private Pricing pricing(Key key) {
        return kept.of(key, () -> Pricing.of(workbench.design(key.id()).folder(), key.laidOut(), line -> {}));
    }

    private static Pricing.Ask ask(Pricing pricing, ForPay request, List<TimedWork> timed) {
        double minutes = request.minutes();
        if (!(minutes >= 0 && minutes <= MOST_MINUTES)) {
            throw new BadRequestException("read " + minutes + " minutes, expected more than 0 and at most "
                    + (int) MOST_MINUTES + ", or 0 for as they are");
        }
        if (request.numbers().size() > MOST_NUMBERS) {
            throw new BadRequestException("read " + request.numbers().size() + " numbers put otherwise, expected "
                    + MOST_NUMBERS + " at most");
        }
        request.numbers().forEach((path, value) -> {
            String unfit = pricing.rates().unfit(path, value);
            if (unfit != null) {
                throw new BadRequestException(unfit);
            }
        });
        return new Pricing.Ask(
                request.quantity(),
                shelf(request.shelf()),
                minutes == 0 ? null : minutes,
                request.numbers(),
                TimedWork.forPrice(timed));
    }

    private static @Nullable BigDecimal shelf(String word) {
        if (word.isEmpty()) {
            return null;
        }
        BigDecimal amount = Pricing.amount(word);
        if (amount == null || amount.signum() == 0) {
            throw new BadRequestException(
                    "read \"" + word
                            + "\" for the shelf price, expected an amount more than 0 and less than 1000000000, as in 35 or 34.90");
        }
        return amount;
    }

    private static void checkPieces(int pieces) {
        if (pieces < 1 || pieces > MOST_PIECES) {
            throw new BadRequestException("read " + pieces + " pieces, expected 1 to " + MOST_PIECES);
        }
    }
}
