package jackwork.cli;

import jackwork.app.core.DesignCheck;
import jackwork.check.Finding;
import jackwork.price.Backwards;
import jackwork.price.BatchSize;
import jackwork.price.CostLine;
import jackwork.price.Ladder;
import jackwork.price.Offer;
import jackwork.price.PriceReport;
import jackwork.price.Swing;
import jackwork.price.Task;
import jackwork.price.WayResult;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The price report as text. */
final class PriceWords {

    private static final int MOST_TASKS = 12;
    private static final int MOST_SWINGS = 6;

    private final PriceReport report;
    private final StringBuilder out = new StringBuilder();

    private PriceWords(PriceReport report) {
        this.report = report;
    }

    static String of(PriceReport report) {
        PriceWords words = new PriceWords(report);
        words.head();
        words.findings();
        words.times();
        words.cost();
        words.ladders();
        words.backwards();
        words.batches();
        words.quicker();
        words.ways();
        words.swings();
        report.cautions().forEach(caution -> words.line("%s", caution));
        return words.out.toString();
    }

    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void head() {
        line(
                "%s: %s; a good piece costs %s %s in batches of %d, and takes %.0f minutes of hands",
                report.design(),
                report.verdict(),
                report.floor(),
                report.currency(),
                report.pieces(),
                report.minutes());
        line(
                "An hour of hands costs %s (%s), %s besides. %d of %d numbers are guesses.",
                report.hour().cost(),
                report.hour().formula(),
                report.hour().overhead(),
                report.guesses(),
                report.numbers().size());
    }

    private void findings() {
        line("");
        for (Finding finding : report.findings()) {
            line("%-9s %s: %s.", finding.status().word(), finding.question(), finding.why());
        }
    }

    private void times() {
        line("%nMinutes for a good piece");
        List<Task> tasks = report.tasks();
        tasks.stream()
                .limit(MOST_TASKS)
                .forEach(task -> line(
                        "  %-15s %6.1f  %3.0f %%  %5.1f × %4.2f min%s, %s: %s",
                        task.operation(),
                        task.minutes(),
                        100 * task.share(),
                        task.count(),
                        task.each(),
                        task.perBatch() ? " a batch" : "",
                        task.basis().words(),
                        task.what()));
        double rest = tasks.stream().skip(MOST_TASKS).mapToDouble(Task::minutes).sum();
        if (rest > 0) {
            line("  %-15s %6.1f", "all others", rest);
        }
        report.machines()
                .forEach(machine -> line(
                        "  %-15s %6.1f  machine, at %s an hour", machine.machine(), machine.minutes(), machine.hour()));
    }

    private void cost() {
        line("%nWhat a good piece costs, %s", report.currency());
        for (CostLine cost : report.lines()) {
            line("  %10s  %s: %s", cost.amount(), cost.group(), cost.name());
        }
        line("  %10s  floor (in it %s of VAT that is not got back)", report.floor(), report.lostVat());
        line(
                "  %10s  in money before the batch begins: %s",
                report.cashTotal(),
                report.cash().stream()
                        .filter(cash -> cash.packs() > 0)
                        .map(cash -> cash.packs() + " × " + cash.item())
                        .collect(Collectors.joining(", ")));
    }

    private void ladders() {
        line("%nFrom the floor to the shelf");
        for (Ladder ladder : report.ladders()) {
            line(
                    "  %s (%s): %s; %s",
                    ladder.channel(),
                    ladder.kind(),
                    ladder.shelf(),
                    ladder.band() == null ? "beyond the dearest band" : ladder.band());
            line(
                    "      %s",
                    ladder.rungs().stream()
                            .map(rung -> rung.name() + " " + rung.adds() + " → " + rung.reaches())
                            .collect(Collectors.joining("; ")));
            if (ladder.breakEven() != null) {
                line("      the day is paid by %s pieces at that price", ladder.breakEven());
            }
        }
        line(
                "  were your registration for VAT the other way about: %s",
                report.laddersOtherVat().stream()
                        .map(ladder -> ladder.channel() + " " + ladder.shelf())
                        .collect(Collectors.joining(", ")));
    }

    private void backwards() {
        line("%nBackwards from %s %s (%s)", report.asked(), report.currency(), report.askedAs());
        for (Backwards back : report.backwards()) {
            line("  %s; as it is, it pays a wage of %s", back.words(), back.paysWage());
        }
    }

    private void batches() {
        line("%nBy the size of the batch");
        for (BatchSize size : report.batches()) {
            line("  %4d: %5.0f min, costs %s, shelf %s", size.pieces(), size.minutes(), size.floor(), size.shelves());
        }
    }

    private void quicker() {
        line(
                "%nMake it quicker (edits of the design counted roughly, before and after alike: each piece from its own sheets)");
        for (Offer offer : report.quicker()) {
            line(
                    "  %s: %s %.1f minutes and %s %s a piece, takes %s to begin with%s. %s",
                    offer.name(),
                    offer.minutesSaved() < 0 ? "costs" : "saves",
                    Math.abs(offer.minutesSaved()),
                    offer.saved().signum() < 0 ? "costs" : "saves",
                    offer.saved().abs(),
                    offer.capital(),
                    offer.paysBack() == null ? "" : ", paid back by " + offer.paysBack() + " pieces",
                    offer.words());
            if (offer.after() != null) {
                line(
                        "      findings were run again: %s%s",
                        DesignCheck.words(offer.after()),
                        offer.worse().isEmpty() ? "" : "; worse: " + String.join(", ", offer.worse()));
            } else if (!offer.findings().equals("stay")) {
                line(
                        "      findings must be run again%s",
                        offer.edit().isEmpty() ? " on the new drawings" : ": --again does it");
            }
        }
    }

    private void ways() {
        line("%nWays of selling, side by side, a finished piece at %s", report.waysPrice());
        for (WayResult way : report.ways()) {
            line(
                    "  %-28s leaves %9s %s%s",
                    way.name(),
                    way.left(),
                    way.unit(),
                    way.anHour() == null ? "" : "; an hour of hands earns " + way.anHour());
            way.purses().forEach(purse -> line("      %s purse: %s a month", purse.whose(), purse.left()));
            if (way.tiedUp() != null) {
                line("      most money tied up at once: %s", way.tiedUp());
            }
            way.words().forEach(words -> line("      %s", words));
        }
    }

    private void swings() {
        line("%nWhat moves the cost most");
        for (Swing swing :
                report.sensitivity().get(0).swings().stream().limit(MOST_SWINGS).toList()) {
            line(
                    "  %-24s %s at %s, %s at %s (%s)",
                    swing.name(),
                    swing.atLow(),
                    plain(swing.number().low()),
                    swing.atHigh(),
                    plain(swing.number().high()),
                    swing.number().basis().words());
        }
        line("");
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value) : Double.toString(value);
    }
}
