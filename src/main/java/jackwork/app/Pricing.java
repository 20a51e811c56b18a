package jackwork.app;

import jackwork.builds.BuildReport;
import jackwork.check.Finding;
import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.make.Quantities;
import jackwork.price.Bands;
import jackwork.price.Batch;
import jackwork.price.Edited;
import jackwork.price.Item;
import jackwork.price.LaidSheet;
import jackwork.price.Money;
import jackwork.price.PriceQuestion;
import jackwork.price.PriceReport;
import jackwork.price.Rates;
import jackwork.price.WayFacts;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Will it pay? What {@code make} takes of a design goes to {@code price} as plain values, and so do its builds. */
public final class Pricing {

    private static final String SPREAD = "ways.kit.spread";

    /**
     * @param quantity good pieces in a batch
     * @param shelf price that it must sell at; null when none is asked
     * @param wage of an hour; the workshop's when null
     * @param measured minutes from the bench, by operation or stage
     */
    public record Ask(
            int quantity,
            @Nullable BigDecimal shelf,
            @Nullable BigDecimal wage,
            Map<String, Double> measured) {}

    /** Virtual builds to draw, for the share of pieces that pass. */
    public record Draw(int builds, long seed, int threads) {}

    private final Design design;
    private final Subject subject;
    private final Quantities quantities;
    private final List<Edited> edits;
    private final Consumer<String> talk;
    private @Nullable Uncertain firstTime;
    private @Nullable Double beginners;

    private Pricing(Path path, int laidOut, boolean again, Consumer<String> talk) {
        this.design = DesignReader.read(path);
        this.subject = Subject.of(design);
        this.quantities = Quantities.of(design, laidOut);
        this.edits = new QuickerEdits(path, design, again, talk).of(quantities);
        this.talk = talk;
    }

    /**
     * Reads a design and lays it out; what is asked of it afterwards is quick.
     *
     * @param design its folder
     * @param laidOut pieces on the sheets that are laid out together
     * @param again whether findings are run again for quicker ways that are edits of the design
     * @param talk told what takes long
     */
    public static Pricing of(Path design, int laidOut, boolean again, Consumer<String> talk) {
        return new Pricing(design, laidOut, again, talk);
    }

    /** One JSON object, pretty. */
    public static String json(PriceReport report) {
        return Json.pretty(report);
    }

    /** Draws builds of this design, put together here and by beginners; the answers that follow take them. */
    public void draw(Draw draw) throws InterruptedException {
        BuildReport report = run(subject, draw);
        firstTime = new Uncertain(
                100 * report.rate(),
                100 * Math.min(report.rate(), report.interval().low()),
                100 * Math.max(report.rate(), report.interval().high()),
                "%",
                Basis.GUESS,
                report.builds() + " virtual builds, seed " + report.seed());
        talk.accept("the same put together by beginners");
        double times = Rates.of(design.workshop()).known(SPREAD).value();
        beginners = run(Subject.of(design.forBeginner(times)), draw).rate();
    }

    private BuildReport run(Subject of, Draw draw) throws InterruptedException {
        return DesignCheck.builds(of, draw.builds(), draw.seed()).run(draw.threads(), done -> {
            if (done % Math.max(1, draw.builds() / 10) == 0) {
                talk.accept(done + " of " + draw.builds() + " builds");
            }
        });
    }

    /** Will it pay? */
    public PriceReport answer(Ask ask) {
        WorkshopFile workshop = design.workshop();
        Rates rates = Rates.of(workshop);
        BigDecimal wage = ask.wage();
        if (wage != null) {
            rates = rates.asked("wage", wage.doubleValue());
        }
        Uncertain passes = firstTime;
        if (passes != null) {
            rates = rates.with("yields.first-time", passes);
        }
        return PriceReport.of(new PriceQuestion(
                design.name(),
                workshop.currency(),
                batch(quantities, workshop),
                rates,
                ask.quantity(),
                ask.measured(),
                ask.shelf(),
                Bands.of(workshop.payOrNothing().bands()),
                new WayFacts(heap(subject), beginners, Money.places(workshop.currency())),
                edits));
    }

    /** Coins that the box holds, where it says how large its cash room is. */
    private static @Nullable Double heap(Subject subject) {
        for (Finding finding : Questions.ask(subject)) {
            if (finding.id().equals("heap")) {
                return finding.value();
            }
        }
        return null;
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
