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
import jackwork.price.PriceQuestion;
import jackwork.price.PriceReport;
import jackwork.price.Rates;
import jackwork.price.WayFacts;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Will it pay? What {@code make} takes of a design goes to {@code price} as plain values, and so do its builds. */
public final class Pricing {

    private static final String SPREAD = "ways.kit.spread";

    /**
     * @param quantity pieces in a batch
     * @param shelf price that it must sell at; null when none is asked
     * @param wage of an hour; the workshop's when null
     * @param measured minutes from the bench, by operation or stage
     * @param builds to draw; 0 for none
     * @param again whether findings are run again for alternatives that are edits
     */
    public record Wish(
            int quantity,
            @Nullable BigDecimal shelf,
            @Nullable BigDecimal wage,
            Map<String, Double> measured,
            int builds,
            long seed,
            int threads,
            boolean again) {}

    private final Path path;
    private final Wish wish;
    private final Consumer<String> talk;

    private Pricing(Path path, Wish wish, Consumer<String> talk) {
        this.path = path;
        this.wish = wish;
        this.talk = talk;
    }

    /**
     * @param design its folder
     * @param talk told what takes long
     */
    public static PriceReport of(Path design, Wish wish, Consumer<String> talk) throws InterruptedException {
        return new Pricing(design, wish, talk).report();
    }

    /** One JSON object, pretty. */
    public static String json(PriceReport report) {
        return Json.pretty(PriceJson.of(report));
    }

    private PriceReport report() throws InterruptedException {
        Design design = DesignReader.read(path);
        WorkshopFile workshop = design.workshop();
        Subject subject = Subject.of(design);
        Rates rates = Rates.of(workshop);
        BigDecimal wage = wish.wage();
        if (wage != null) {
            rates = rates.asked("wage", wage.doubleValue());
        }
        Double beginners = null;
        if (wish.builds() > 0) {
            rates = rates.with("yields.first-time", firstTime(subject));
            double times = workshopSpread(rates);
            talk.accept("the same put together by beginners");
            beginners = run(Subject.of(design.forBeginner(times))).rate();
        }
        Quantities quantities = Quantities.of(design, wish.quantity());
        PriceQuestion question = new PriceQuestion(
                design.name(),
                workshop.currency(),
                batch(quantities, workshop),
                rates,
                wish.quantity(),
                wish.measured(),
                wish.shelf(),
                Bands.of(workshop.payOrNothing().bands()),
                new WayFacts(heap(subject), beginners),
                edits(design, quantities));
        return PriceReport.of(question);
    }

    private static double workshopSpread(Rates rates) {
        return rates.known(SPREAD).value();
    }

    private Uncertain firstTime(Subject subject) throws InterruptedException {
        BuildReport report = run(subject);
        return new Uncertain(
                100 * report.rate(),
                100 * Math.min(report.rate(), report.interval().low()),
                100 * Math.max(report.rate(), report.interval().high()),
                "%",
                Basis.GUESS,
                report.builds() + " virtual builds, seed " + report.seed());
    }

    private BuildReport run(Subject subject) throws InterruptedException {
        return DesignCheck.builds(subject, wish.builds(), wish.seed()).run(wish.threads(), done -> {
            if (done % Math.max(1, wish.builds() / 10) == 0) {
                talk.accept(done + " of " + wish.builds() + " builds");
            }
        });
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

    private List<Edited> edits(Design design, Quantities quantities) {
        QuickerEdits edits = new QuickerEdits(path, design, wish.quantity(), wish.again(), talk);
        return new ArrayList<>(edits.of(quantities));
    }
}
