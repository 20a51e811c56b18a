package jackwork.app.bench;

import jackwork.app.core.TimedWork;
import jackwork.app.core.Workshop;
import jackwork.app.wire.Report;
import jackwork.bench.BenchLog;
import jackwork.bench.Happening;
import jackwork.bench.Kinds;
import jackwork.bench.Money;
import jackwork.bench.Piece;
import jackwork.bench.Prediction;
import jackwork.bench.Revision;
import jackwork.bench.Score;
import jackwork.bench.Taking;
import jackwork.bench.Timing;
import jackwork.bench.Whereabouts;
import jackwork.chance.Interval;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes a {@link BenchView} of what the log says. */
final class BenchViewMaker {

    private static final Map<String, String> CAUSE_WORDS = causeWords();

    private final Bench bench;
    private final BenchLog log;
    private final BenchReport.Wish wish;

    BenchViewMaker(Bench bench, BenchReport.Wish wish) {
        this.bench = bench;
        this.log = bench.log();
        this.wish = wish;
    }

    /** @param design empty for all */
    BenchView of(String design, List<Workshop.DesignName> there) throws IOException {
        String state = log.state();
        WorkshopFile workshop = WorkshopReader.read(bench.workshop());
        BenchReport report = BenchReport.of(log, design.isEmpty() ? null : design, wish);
        List<Happening> happenings = log.counting(Kinds.HAPPENINGS);
        List<Taking> takings = log.counting(Kinds.TAKINGS);
        List<Timing> timed = log.counting(Kinds.TIMINGS);
        LoggedEntries entries = LoggedEntries.of(log, design);
        return new BenchView(
                state,
                workshop.currency(),
                design,
                designs(log.revisions(), there),
                report.revisions().stream().map(this::frozen).toList(),
                TimedWork.of(log, design),
                since(design, report.revisions()),
                log.counting(Kinds.PIECES).stream()
                        .filter(piece ->
                                design.isEmpty() || piece.revision().design().equals(design))
                        .map(piece -> piece(piece, happenings, takings))
                        .toList(),
                sums(takings.stream().map(Taking::money)),
                sums(happenings.stream()
                        .filter(happening -> happening.what() == Happening.What.SOLD)
                        .map(Happening::money)),
                report.measured().stream().map(BenchViewMaker::measured).toList(),
                entries.newest(),
                entries.older(),
                BenchChoices.of(workshop, timed));
    }

    private static List<BenchView.KnownDesign> designs(List<Revision> revisions, List<Workshop.DesignName> there) {
        Map<String, BenchView.KnownDesign> designs = new LinkedHashMap<>();
        there.forEach(name -> designs.put(name.id(), new BenchView.KnownDesign(name.id(), name.name(), 0, true)));
        for (Revision revision : revisions) {
            String id = revision.name().design();
            BenchView.KnownDesign known = designs.get(id);
            designs.put(
                    id,
                    new BenchView.KnownDesign(
                            id,
                            known == null ? revision.title() : known.title(),
                            revision.name().number(),
                            known != null));
        }
        return List.copyOf(designs.values());
    }

    private BenchView.Frozen frozen(BenchReport.OfRevision of) {
        Revision revision = of.revision();
        Prediction prediction = of.prediction();
        return new BenchView.Frozen(
                revision.name().design(),
                revision.name().number(),
                revision.title(),
                revision.at().toString(),
                revision.note(),
                bench.coins(revision.name()),
                score(of.all(), prediction),
                of.coins().stream().map(this::coin).toList(),
                prediction == null ? null : predicted(prediction));
    }

    private BenchView.CoinScore coin(BenchReport.OfCoin coin) {
        Integer predicted = coin.predicted();
        return new BenchView.CoinScore(
                coin.coin(),
                score(coin.score(), null),
                predicted,
                coin.builds(),
                predicted == null ? null : interval(Interval.ofRate(predicted, coin.builds())),
                coin.gapChance(),
                GapWords.of(coin.gapChance()));
    }

    private BenchView.ScoreView score(Score score, @Nullable Prediction beside) {
        return new BenchView.ScoreView(
                score.tries(),
                score.passes(),
                score.tries() == 0 ? null : score.rate(),
                interval(score.interval()),
                causes(score.failures(), beside),
                score.cleanNeeded(wish.rate(), wish.confidence()));
    }

    private static List<BenchView.CauseTries> causes(Map<String, Integer> counts, @Nullable Prediction beside) {
        return counts.entrySet().stream()
                .map(cause -> new BenchView.CauseTries(
                        cause.getKey(),
                        CAUSE_WORDS.getOrDefault(cause.getKey(), cause.getKey().replace('-', ' ')),
                        cause.getValue(),
                        beside == null ? null : beside.causes().getOrDefault(cause.getKey(), 0)))
                .toList();
    }

    private static Map<String, String> causeWords() {
        Map<String, String> words = new LinkedHashMap<>();
        BenchChoices.everyCause().forEach(cause -> words.put(cause.cause(), cause.words()));
        return words;
    }

    private static Report.Interval interval(Interval interval) {
        return new Report.Interval(interval.low(), interval.high());
    }

    private static BenchView.Predicted predicted(Prediction prediction) {
        return new BenchView.Predicted(
                prediction.stamp().at().toString(),
                prediction.builds(),
                prediction.passes(),
                prediction.numbers(),
                prediction.guesses(),
                causes(prediction.causes(), null));
    }

    /** What stands otherwise on the disk than in the last revision. */
    private BenchView.@Nullable Since since(String design, List<BenchReport.OfRevision> revisions) throws IOException {
        Path folder = bench.workshop().resolve(design);
        if (design.isEmpty() || !folder.resolve(DesignReader.FILE).toFile().isFile()) {
            return null;
        }
        if (revisions.isEmpty()) {
            return new BenchView.Since(0, List.of());
        }
        Revision last = revisions.get(revisions.size() - 1).revision();
        try {
            Design read = DesignReader.read(folder);
            List<String> changed = RevisionDifference.between(log.files(last.name()), DesignFiles.bytes(read)).stream()
                    .flatMap(difference -> difference.words().stream())
                    .toList();
            return new BenchView.Since(last.name().number(), changed);
        } catch (DesignException e) {
            return new BenchView.Since(
                    last.name().number(), List.of("cannot be read as it stands: " + String.valueOf(e.getMessage())));
        }
    }

    private static BenchView.MadePiece piece(Piece piece, List<Happening> all, List<Taking> takings) {
        List<Happening> its = all.stream()
                .filter(happening -> happening.serial().equals(piece.serial()))
                .toList();
        Whereabouts where = Whereabouts.of(piece, its);
        return new BenchView.MadePiece(
                piece.serial(),
                piece.revision().design(),
                piece.revision().number(),
                piece.batch(),
                where.what().word(),
                where.who(),
                where.since().toString(),
                count(its, Happening.What.REPAIRED),
                count(its, Happening.What.SPARE),
                count(its, Happening.What.RETURNED),
                sums(takings.stream()
                        .filter(taking -> taking.serial().equals(piece.serial()))
                        .map(Taking::money)));
    }

    private static int count(List<Happening> its, Happening.What what) {
        return (int) its.stream().filter(happening -> happening.what() == what).count();
    }

    /** By currency; amounts of different currencies are never added up. */
    private static List<BenchView.MoneySum> sums(Stream<@Nullable Money> amounts) {
        Map<String, BigDecimal> sums = new TreeMap<>();
        for (Money money : amounts.toList()) {
            if (money != null) {
                sums.merge(money.currency(), money.amount(), BigDecimal::add);
            }
        }
        List<BenchView.MoneySum> all = new ArrayList<>();
        sums.forEach((currency, amount) -> all.add(new BenchView.MoneySum(amount.toPlainString(), currency)));
        return all;
    }

    private static BenchView.MeasuredThing measured(BenchReport.OfMeasured of) {
        Uncertain value = of.value();
        return new BenchView.MeasuredThing(
                of.kind() + (of.about().isEmpty() ? "" : ":" + of.about()),
                of.kind(),
                of.about(),
                of.place(),
                of.measurements(),
                value == null ? null : value(value),
                of.why());
    }

    static BenchView.ValueView value(Uncertain value) {
        return new BenchView.ValueView(value.value(), value.low(), value.high(), value.unit(), value.source());
    }
}
