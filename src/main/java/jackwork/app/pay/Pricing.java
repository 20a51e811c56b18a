package jackwork.app.pay;

import jackwork.app.core.DesignCheck;
import jackwork.app.core.TimedWork;
import jackwork.app.wire.Json;
import jackwork.bench.BenchLog;
import jackwork.builds.BuildReport;
import jackwork.builds.BuildRun;
import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.make.Quantities;
import jackwork.price.Bands;
import jackwork.price.Batch;
import jackwork.price.Costing;
import jackwork.price.Edited;
import jackwork.price.Item;
import jackwork.price.LaidSheet;
import jackwork.price.Money;
import jackwork.price.PriceQuestion;
import jackwork.price.PriceReport;
import jackwork.price.Rates;
import jackwork.price.Timed;
import jackwork.price.Timings;
import jackwork.price.WayFacts;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/** Will it pay? What {@code make} takes of a design goes to {@code price} as plain values, and so do its builds. */
public final class Pricing {

    private static final String SPREAD = "ways.kit.spread";

    /**
     * @param quantity good pieces in a batch
     * @param shelf price that it must sell at; null when none is asked
     * @param minutes of hands that a good piece may be taken to need: every operation is then as much shorter or longer;
     *     null for as long as they take
     * @param numbers put otherwise for this question, by their paths in workshop.yaml
     * @param timed at the bench, by operation or stage
     */
    public record Ask(
            int quantity,
            @Nullable BigDecimal shelf,
            @Nullable Double minutes,
            Map<String, Double> numbers,
            Map<String, Timed> timed) {}

    /** Virtual builds to draw, for the share of pieces that pass. */
    public record Draw(int builds, long seed, int threads) {}

    /**
     * What came of them.
     *
     * @param beginners share that passes when beginners put it together
     */
    record Drawn(BuildReport report, double beginners) {

        /** As a number like all others, percent. */
        Uncertain passes() {
            return new Uncertain(
                    100 * report.rate(),
                    100 * Math.min(report.rate(), report.interval().low()),
                    100 * Math.max(report.rate(), report.interval().high()),
                    "%",
                    Basis.GUESS,
                    report.builds() + " virtual builds, seed " + report.seed());
        }
    }

    private final Design design;
    private final Subject subject;
    private final Batch batch;
    private final @Nullable Double heap;
    private final QuickerEdits quicker;
    private volatile List<Edited> edits;
    private volatile @Nullable Drawn drawn;

    private Pricing(Design design, Batch batch, QuickerEdits quicker) {
        this.design = design;
        this.subject = Subject.of(design);
        this.batch = batch;
        this.heap = Questions.coinsHeld(subject);
        this.quicker = quicker;
        this.edits = quicker.all();
    }

    /**
     * Reads a design and lays it out; what is asked of it afterwards is quick, and may be asked by any thread.
     *
     * @param design its folder
     * @param laidOut pieces on the sheets that are laid out together
     * @param talk told what cannot be made otherwise
     */
    public static Pricing of(Path design, int laidOut, Consumer<String> talk) {
        Design read = DesignReader.read(design);
        // Each quicker way roughly, while the sheets of the batch are laid out tightly.
        ForkJoinTask<QuickerEdits> quicker = ForkJoinTask.adapt(() -> new QuickerEdits(design, read, laidOut, talk))
                .fork();
        Batch batch = batch(Quantities.of(read, laidOut), read.workshop());
        return new Pricing(read, batch, quicker.join());
    }

    /** Quicker ways that are edits of the design. */
    int edits() {
        return edits.size();
    }

    /** What the bench's log has timed of this design's work, as it stands now. */
    public List<TimedWork> timed() {
        return WorkshopReader.folderOf(design.folder())
                .map(folder -> TimedWork.of(BenchLog.in(folder), DesignFiles.id(design)))
                .orElse(List.of());
    }

    /** What builds came to, once they were drawn. */
    @Nullable
    Drawn drawn() {
        return drawn;
    }

    /** The workshop's own numbers and our guesses, as nothing is asked. */
    Rates rates() {
        return Rates.of(design.workshop());
    }

    /** Runs the findings again for quicker ways that are edits of the design; the answers that follow have them. */
    public void again(Consumer<String> told) throws InterruptedException {
        edits = quicker.again(told);
    }

    /** An amount as people write it: 35 or 34.90; null when it is none. */
    public static @Nullable BigDecimal amount(String word) {
        return word.matches("\\d{1,9}(\\.\\d{1,4})?") ? new BigDecimal(word) : null;
    }

    /** One JSON object, pretty, amounts as numbers with all their places. */
    public static String json(PriceReport report) {
        return Json.pretty(report);
    }

    /**
     * Draws builds of this design, put together here and by beginners; the answers that follow take them.
     *
     * @param done told how many are tried, of twice as many as are drawn; by any thread
     */
    public void draw(Draw draw, IntConsumer done) throws InterruptedException {
        BuildRun here = DesignCheck.builds(subject, draw.builds(), draw.seed());
        BuildReport report = here.run(draw.threads(), done);
        double times = rates().known(SPREAD).value();
        Subject beginner = Subject.of(design.forBeginner(times));
        BuildReport beginners = DesignCheck.builds(beginner, draw.builds(), draw.seed())
                .run(draw.threads(), tried -> done.accept(here.size() + tried));
        drawn = new Drawn(report, beginners.rate());
    }

    /** Will it pay? */
    public PriceReport answer(Ask ask) {
        WorkshopFile workshop = design.workshop();
        Drawn builds = drawn;
        Rates rates = rates();
        if (builds != null) {
            rates = rates.with("yields.first-time", builds.passes());
        }
        // What is asked by hand stands above what was timed.
        rates = Timings.in(rates, batch, ask.timed()).asked(ask.numbers());
        Double minutes = ask.minutes();
        double now = Costing.of(batch, rates, ask.quantity()).minutes();
        if (minutes != null && now > 0) {
            rates = rates.taking(minutes / now);
        }
        return PriceReport.of(new PriceQuestion(
                design.name(),
                workshop.currency(),
                batch,
                rates,
                ask.quantity(),
                Timings.unused(ask.timed().keySet()),
                ask.shelf(),
                Bands.of(workshop.payOrNothing().bands()),
                new WayFacts(heap, builds == null ? null : builds.beginners(), Money.places(workshop.currency())),
                edits));
    }

    static Batch batch(Quantities quantities, WorkshopFile workshop) {
        List<LaidSheet> sheets = quantities.sheets().stream()
                .map(sheet ->
                        new LaidSheet(sheet.stock(), area(workshop, sheet.stock()), sheet.seconds(), sheet.kept()))
                .toList();
        List<Item> items = quantities.items().stream()
                .map(item -> new Item(item.item(), item.kind(), item.amount(), item.testing(), item.unit()))
                .toList();
        return new Batch(
                quantities.quantity(), sheets, items, quantities.printedGrams(), quantities.work(), workshop.have());
    }

    /** Of a sheet as bought, m². */
    private static double area(WorkshopFile workshop, String stock) {
        var entry = workshop.sheets().get(stock);
        if (entry == null) {
            throw new IllegalStateException("sheet " + stock + " was not checked on reading");
        }
        return entry.size().get(0) * entry.size().get(1) / 1e6;
    }
}
