package jackwork.app.bench;

import jackwork.app.wire.Json;
import jackwork.bench.BenchLog;
import jackwork.bench.Happening;
import jackwork.bench.Kinds;
import jackwork.bench.LogKind;
import jackwork.bench.Logged;
import jackwork.bench.Money;
import jackwork.bench.Piece;
import jackwork.bench.Prediction;
import jackwork.bench.Revision;
import jackwork.bench.Score;
import jackwork.bench.Stamp;
import jackwork.bench.Stamped;
import jackwork.bench.Taking;
import jackwork.bench.Whereabouts;
import jackwork.check.Finding;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The bench log as JSON with stable names, described in docs/bench-log.md. */
public final class BenchJson {

    private static final int FORMAT_VERSION = 1;

    private BenchJson() {}

    public static String report(BenchReport report, BenchLog log) {
        ObjectNode node = head();
        ObjectNode wish = node.putObject("wish");
        wish.put("rate", report.wish().rate()).put("confidence", report.wish().confidence());
        ArrayNode revisions = node.putArray("revisions");
        report.revisions().forEach(revision -> revisions.add(revision(revision, report.wish())));
        ArrayNode measured = node.putArray("measured");
        for (BenchReport.OfMeasured each : report.measured()) {
            ObjectNode entry = measured.addObject().put("kind", each.kind()).put("about", each.about());
            entry.put("place", each.place()).put("measurements", each.measurements());
            entry.set("value", uncertain(each.value()));
            entry.put("why", each.why());
        }
        ArrayNode pieces = node.putArray("pieces");
        pieces(log).forEach(pieces::add);
        return Json.pretty(node);
    }

    private static ObjectNode revision(BenchReport.OfRevision of, BenchReport.Wish wish) {
        ObjectNode node = revision(of.revision());
        node.set("all", score(of.all(), wish));
        ArrayNode coins = node.putArray("coins");
        for (BenchReport.OfCoin coin : of.coins()) {
            ObjectNode entry = coins.addObject().put("coin", coin.coin());
            entry.set("measured", score(coin.score(), wish));
            if (coin.predicted() == null) {
                entry.putNull("predicted");
            } else {
                entry.putObject("predicted").put("builds", coin.builds()).put("passes", coin.predicted());
            }
            Json.put(entry, "gapChance", coin.gapChance(), 6);
        }
        ArrayNode operations = node.putArray("operations");
        for (BenchReport.OfOperation operation : of.operations()) {
            ObjectNode entry = operations.addObject().put("operation", operation.operation());
            Json.put(entry, "minutesAPiece", operation.minutes(), 3);
            entry.put("pieces", operation.pieces()).put("times", operation.times());
        }
        Prediction prediction = of.prediction();
        if (prediction == null) {
            node.putNull("prediction");
        } else {
            node.set("prediction", prediction(prediction));
        }
        return node;
    }

    private static ObjectNode prediction(Prediction prediction) {
        ObjectNode node = Json.object();
        node.put("at", prediction.stamp().at().toString());
        node.put("seed", prediction.seed()).put("builds", prediction.builds()).put("passes", prediction.passes());
        node.put("numbersDrawn", prediction.numbers()).put("guesses", prediction.guesses());
        ObjectNode causes = node.putObject("causes");
        prediction.causes().forEach(causes::put);
        return node;
    }

    private static ObjectNode revision(Revision revision) {
        ObjectNode node = Json.object();
        node.put("design", revision.name().design());
        node.put("revision", revision.name().number());
        node.put("title", revision.title()).put("at", revision.at().toString()).put("note", revision.note());
        node.put("fingerprint", revision.fingerprint());
        return node;
    }

    private static ObjectNode score(Score score, BenchReport.Wish wish) {
        ObjectNode node = Json.object();
        node.put("tries", score.tries()).put("passes", score.passes());
        Json.put(node, "rate", score.rate(), 6);
        ObjectNode interval = node.putObject("interval95");
        Json.put(interval, "low", score.interval().low(), 6);
        Json.put(interval, "high", score.interval().high(), 6);
        ObjectNode failures = node.putObject("failures");
        score.failures().forEach(failures::put);
        node.put("cleanCoinsNeeded", score.cleanNeeded(wish.rate(), wish.confidence()));
        return node;
    }

    /** Frozen states with their files. */
    public static String revisions(List<Revision> revisions) {
        ObjectNode node = head();
        ArrayNode all = node.putArray("revisions");
        for (Revision revision : revisions) {
            ObjectNode entry = revision(revision);
            ObjectNode files = entry.putObject("files");
            revision.files().forEach(files::put);
            all.add(entry);
        }
        return Json.pretty(node);
    }

    public static String differences(List<RevisionDifference> differences) {
        ObjectNode node = head();
        ArrayNode all = node.putArray("differences");
        for (RevisionDifference difference : differences) {
            ObjectNode entry = all.addObject().put("file", difference.file()).put("how", difference.how());
            ArrayNode values = entry.putArray("values");
            difference
                    .values()
                    .forEach(value -> values.addObject()
                            .put("path", value.path())
                            .put("before", value.before())
                            .put("after", value.after()));
        }
        return Json.pretty(node);
    }

    /** Entries of a kind, struck ones too, by the names of their CSV columns; all values as text. */
    public static <T extends Stamped> String entries(LogKind<T> kind, List<Logged<T>> entries) {
        ObjectNode node = head();
        ArrayNode all = node.putArray(kind.name());
        for (Logged<T> logged : entries) {
            Stamp stamp = logged.entry().stamp();
            ObjectNode entry = all.addObject().put("number", logged.number()).put("struck", logged.struck());
            entry.put("key", stamp.key()).put("at", stamp.at().toString());
            List<String> fields = kind.fields(logged.entry());
            for (int i = 0; i < fields.size(); i++) {
                entry.put(kind.columns().get(i), fields.get(i));
            }
            entry.put("note", stamp.note());
        }
        return Json.pretty(node);
    }

    /** Every piece with where it is and what it took in. */
    public static List<ObjectNode> pieces(BenchLog log) {
        List<Happening> happenings = log.counting(Kinds.HAPPENINGS);
        List<Taking> takings = log.counting(Kinds.TAKINGS);
        return log.counting(Kinds.PIECES).stream()
                .map(piece -> piece(piece, happenings, takings))
                .toList();
    }

    private static ObjectNode piece(Piece piece, List<Happening> allHappenings, List<Taking> allTakings) {
        List<Happening> its = allHappenings.stream()
                .filter(happening -> happening.serial().equals(piece.serial()))
                .toList();
        Whereabouts where = Whereabouts.of(piece, its);
        ObjectNode node = Json.object().put("serial", piece.serial());
        node.put("design", piece.revision().design());
        node.put("revision", piece.revision().number()).put("batch", piece.batch());
        node.put("where", where.what().word()).put("who", where.who());
        node.put("since", where.since().toString());
        node.put("repairs", count(its, Happening.What.REPAIRED)).put("spares", count(its, Happening.What.SPARE));
        node.put("returns", count(its, Happening.What.RETURNED));
        Map<String, BigDecimal> sums = new TreeMap<>();
        allTakings.stream()
                .filter(taking -> taking.serial().equals(piece.serial()))
                .map(Taking::money)
                .forEach((Money money) -> sums.merge(money.currency(), money.amount(), BigDecimal::add));
        ObjectNode taken = node.putObject("takings");
        sums.forEach((currency, amount) -> taken.put(currency, amount.toPlainString()));
        return node;
    }

    private static int count(List<Happening> its, Happening.What what) {
        return (int) its.stream().filter(happening -> happening.what() == what).count();
    }

    public static String use(UseMeasured use, List<UseMeasured.Effect> effects, boolean written) {
        ObjectNode node = head();
        ObjectNode values = node.putObject("values");
        use.values().forEach((name, value) -> values.set(name, uncertain(value)));
        ObjectNode skipped = node.putObject("skipped");
        use.skipped().forEach(skipped::put);
        ArrayNode designs = node.putArray("designs");
        for (UseMeasured.Effect effect : effects) {
            ObjectNode entry = designs.addObject().put("design", effect.design());
            entry.put("then", effect.then()).put("now", effect.now()).put("trouble", effect.trouble());
            ArrayNode moved = entry.putArray("moved");
            for (UseMeasured.Moved each : effect.moved()) {
                ObjectNode finding =
                        moved.addObject().put("question", each.question().toString());
                side(finding, "then", each.then());
                side(finding, "now", each.now());
            }
        }
        return Json.pretty(node.put("written", written));
    }

    private static void side(ObjectNode node, String name, @Nullable Finding finding) {
        if (finding == null) {
            node.putNull(name);
        } else {
            ObjectNode side =
                    node.putObject(name).put("status", finding.status().word());
            Json.put(side, "margin", finding.margin(), 9);
        }
    }

    private static @Nullable ObjectNode uncertain(@Nullable Uncertain value) {
        if (value == null) {
            return null;
        }
        ObjectNode node = Json.object();
        Json.put(node, "value", value.value(), 6);
        Json.put(node, "low", value.low(), 6);
        Json.put(node, "high", value.high(), 6);
        return node.put("unit", value.unit()).put("source", value.source());
    }

    private static ObjectNode head() {
        return Json.object().put("formatVersion", FORMAT_VERSION);
    }
}
