package jackwork.app.bench;

import jackwork.app.wire.Json;
import jackwork.bench.BenchException;
import jackwork.bench.Kinds;
import jackwork.bench.Piece;
import jackwork.bench.Revision;
import jackwork.bench.RevisionName;
import jackwork.bench.Stamp;
import jackwork.bench.Timing;
import jackwork.bench.Trial;
import jackwork.design.WorkshopReader;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a phone may do: learn what there is to log, and log it. Each entry has a name of the phone's making; the same name
 * again is answered as before and logged once, so that a phone whose connection dropped may send all of it anew.
 */
public final class PhoneLog {

    /** A phone's clock may be so far ahead; what says more is taken as of now. */
    private static final Duration AHEAD = Duration.ofHours(24);

    /** A clock that says less was never set. */
    private static final Instant NEVER_SET = Instant.parse("2000-01-01T00:00:00Z");

    private final Bench bench;
    private final Clock clock;

    public PhoneLog(Bench bench, Clock clock) {
        this.bench = bench;
        this.clock = clock;
    }

    /** {@code {workshop, designs: [{design, title, revision, coins, pieces, tries, passes}], causes, operations}}. */
    public String choicesJson() {
        ObjectNode node = Json.object();
        node.put("workshop", WorkshopReader.read(bench.workshop()).name());
        Map<String, Revision> last = new LinkedHashMap<>();
        bench.log().revisions().forEach(revision -> last.put(revision.name().design(), revision));
        List<Piece> pieces = bench.log().counting(Kinds.PIECES);
        List<Trial> trials = bench.log().counting(Kinds.TRIALS);
        ArrayNode designs = node.putArray("designs");
        last.values().forEach(revision -> designs.add(design(revision, pieces, trials)));
        ArrayNode causes = node.putArray("causes");
        BenchChoices.everyCause()
                .forEach(cause -> causes.addObject().put("cause", cause.cause()).put("words", cause.words()));
        ArrayNode names = node.putArray("operations");
        BenchChoices.operationsWith(bench.log().counting(Kinds.TIMINGS)).forEach(names::add);
        return Json.compact(node);
    }

    private ObjectNode design(Revision revision, List<Piece> pieces, List<Trial> trials) {
        ObjectNode node = Json.object().put("design", revision.name().design());
        node.put("title", revision.title()).put("revision", revision.name().number());
        ArrayNode coins = node.putArray("coins");
        bench.coins(revision.name()).forEach(coins::add);
        ArrayNode serials = node.putArray("pieces");
        pieces.stream()
                .filter(piece -> piece.revision().equals(revision.name()))
                .forEach(piece -> serials.add(piece.serial()));
        List<Trial> its = trials.stream()
                .filter(trial -> trial.revision().equals(revision.name()))
                .toList();
        node.put("tries", its.stream().mapToInt(Trial::tries).sum());
        return node.put("passes", its.stream().mapToInt(Trial::passes).sum());
    }

    /**
     * Logs what a phone sends: {@code {entries: [{id, kind, ...}]}}.
     *
     * @return {@code {results: [{id, logged, problem}]}}: what is refused for good says why, all else is on the disk
     * @throws BenchException when the log cannot be reached: the phone may send the same again
     * @throws IllegalArgumentException when it is no such thing
     */
    public String logJson(String body) {
        JsonNode entries;
        try {
            entries = JsonMapper.shared().readTree(body).get("entries");
        } catch (JacksonException e) {
            throw new IllegalArgumentException("no JSON: " + e.getOriginalMessage(), e);
        }
        if (entries == null || !entries.isArray() || entries.size() > EntryAnswers.MOST) {
            throw new IllegalArgumentException("expected {\"entries\": [...]} with " + EntryAnswers.MOST + " at most");
        }
        List<JsonNode> all = new ArrayList<>();
        entries.forEach(all::add);
        return Json.compact(EntryAnswers.of(all, entry -> text(entry, "id"), this::log));
    }

    /** What a phone brings to be let in: {@code {token}}; empty when it brings nothing of the kind. */
    public static String token(String body) {
        try {
            return text(JsonMapper.shared().readTree(body), "token");
        } catch (JacksonException e) {
            return "";
        }
    }

    private void log(JsonNode entry) {
        String kind = text(entry, "kind");
        Stamp stamp = new Stamp("phone-" + text(entry, "id"), at(text(entry, "at")), text(entry, "note"));
        switch (kind) {
            case "trial" -> EntryAnswers.once(bench.log(), Kinds.TRIALS, stamp, () -> trial(entry, stamp));
            case "timing" -> EntryAnswers.once(bench.log(), Kinds.TIMINGS, stamp, () -> timing(entry, stamp));
            case "strike-trial" ->
                bench.log().strike(Kinds.TRIALS, "phone-" + text(entry, "strikes"), "taken back on the phone");
            default ->
                throw new IllegalArgumentException(
                        "read the kind \"" + kind + "\", expected trial, timing or strike-trial");
        }
    }

    private static Trial trial(JsonNode entry, Stamp stamp) {
        String cause = text(entry, "cause");
        String piece = text(entry, "piece");
        return new Trial(
                stamp,
                revision(entry),
                piece.isEmpty() ? null : piece,
                text(entry, "coin"),
                1,
                cause.isEmpty() ? Map.of() : Map.of(cause, 1));
    }

    private static Timing timing(JsonNode entry, Stamp stamp) {
        return new Timing(
                stamp,
                revision(entry),
                text(entry, "operation"),
                entry.path("minutes").asDouble(0),
                entry.path("pieces").asInt(1));
    }

    private static RevisionName revision(JsonNode entry) {
        return new RevisionName(text(entry, "design"), entry.path("revision").asInt(0));
    }

    private Instant at(String text) {
        Instant now = clock.instant();
        try {
            Instant said = Instant.parse(text);
            return said.isAfter(now.plus(AHEAD)) || said.isBefore(NEVER_SET) ? now : said;
        } catch (DateTimeParseException e) {
            return now;
        }
    }

    private static String text(@Nullable JsonNode entry, String name) {
        return entry == null ? "" : entry.path(name).asString("");
    }
}
