package jackwork.motion.coin;

import jackwork.app.core.MechanismJson;
import jackwork.design.Design;
import jackwork.design.DesignReader;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A hundred visits to the heron and three of its spoiled copies, fixed by a seed, each run by the engine and by the peer. Visits
 * that fail are among them: coins of a third of their mass, fingers of a tenth of a newton, a counterweight too heavy, a tail too
 * light, a kicker that does not reach.
 */
final class PeerCases {

    static final int CASES = 100;
    private static final long SEED = 2026;
    /** A visit whose outcome changes when one number moves by this share is on a margin: no engine has it for certain. */
    private static final double NEAR = 0.05;

    /** How the peer solves. */
    static final LoneWorld.Solver USUAL = new LoneWorld.Solver(2.5e-4, 40);

    /** A design as the engine has it, and as it is printed. */
    record Subject(String name, CycleRig rig, CycleRig whole, JsonNode json) {

        static Subject of(String folder) {
            Design design = DesignReader.read(Path.of("demo").resolve(folder));
            Assembly assembly = Assembler.assemble(design);
            return new Subject(
                    folder,
                    CycleRig.of(assembly, 0, 0),
                    CycleRig.unfolded(assembly, 0, 0),
                    JsonMapper.builder().build().readTree(MechanismJson.of(design)));
        }

        /** The same for the peer told otherwise. */
        Subject spoiled(Consumer<JsonNode> how) {
            JsonNode told = json.deepCopy();
            how.accept(told);
            return new Subject(name, rig, whole, told);
        }
    }

    /** One visit. */
    record Case(int number, Subject subject, String coin, LoneDrop drop) {

        /** A coin let go in the middle of the slot, pressed as most do. */
        static Case asNumbered(Subject subject, String code) {
            for (JsonNode coin : subject.json().get("coins")) {
                if (coin.get("code").stringValue().equals(code)) {
                    double mass = coin.get("mass").doubleValue();
                    double radius = coin.get("radius").doubleValue();
                    return new Case(0, subject, code, new LoneDrop(mass, radius, 0, 60, 0.35, 6, 150));
                }
            }
            throw new IllegalArgumentException(code);
        }

        /** The same visit to another. */
        Case of(Subject other) {
            return new Case(number, other, coin, drop);
        }

        /** Whether the peer misses that stage first, or none where it works. */
        boolean peersOutcome(String outcome) {
            return new Judged(this, Map.of(), peers(USUAL)).peersOutcome().equals(outcome);
        }

        /** In words, to find it again. */
        String name() {
            return String.format(
                    Locale.ROOT,
                    "%d: %s, %s of %.2f g, %+.2f mm, dropped at %.0f mm/s, friction %.2f, %.2f N at %.0f mm/s",
                    number,
                    subject.name(),
                    coin,
                    drop.mass(),
                    drop.offset(),
                    drop.speed(),
                    drop.friction(),
                    drop.force(),
                    drop.press());
        }

        CycleResult ours() {
            return ours(subject.rig(), 1, 1, 1);
        }

        /** With every body of the figure by itself. */
        Map<String, Double> oursUnfolded() {
            return named(ours(subject.whole(), 1, 1, 1));
        }

        static Map<String, Double> named(CycleResult result) {
            Map<String, Double> times = new LinkedHashMap<>();
            result.times().forEach((stage, at) -> times.put(stage.name().toLowerCase(Locale.ROOT), at));
            return times;
        }

        private CycleResult ours(CycleRig rig, double mass, double force, double speed) {
            double rebound = rebound("chute-left");
            CoinDrop coin = new CoinDrop(
                    mass * drop.mass(),
                    drop.radius(),
                    drop.offset(),
                    drop.speed(),
                    drop.friction(),
                    rebound,
                    rebound("bucket-core"));
            return CoinCycle.run(rig, coin, new Press(force * drop.force(), speed * drop.press()), CoinCycle.NOBODY);
        }

        private double rebound(String part) {
            for (JsonNode contact : subject.json().get("contacts")) {
                if (contact.get("a").stringValue().equals("coin")
                        && contact.get("b").stringValue().equals(part)) {
                    return contact.get("rebound").doubleValue();
                }
            }
            throw new IllegalArgumentException(part);
        }

        Map<String, Double> peers(LoneWorld.Solver solver) {
            return LoneCycle.times(subject.json(), drop, solver);
        }

        /** By the engine alone, whatever the peer says. */
        boolean isOnMargin() {
            Optional<CycleStage> outcome = ours().firstMissed();
            for (double near : new double[] {1 - NEAR, 1 + NEAR}) {
                if (!ours(subject.rig(), near, 1, 1).firstMissed().equals(outcome)
                        || !ours(subject.rig(), 1, near, 1).firstMissed().equals(outcome)
                        || !ours(subject.rig(), 1, 1, near).firstMissed().equals(outcome)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** A visit as both have it. */
    record Judged(Case visit, Map<String, Double> ours, Map<String, Double> peers) {

        static Judged of(Case visit) {
            return new Judged(visit, Case.named(visit.ours()), visit.peers(USUAL));
        }

        /** The first stage that was missed. */
        String outcome() {
            return outcome(ours);
        }

        String peersOutcome() {
            return outcome(peers);
        }

        private String outcome(Map<String, Double> times) {
            for (JsonNode stage : visit.subject().json().get("cycle").get("stages")) {
                if (!times.containsKey(stage.stringValue())) {
                    return stage.stringValue();
                }
            }
            return WORKS;
        }

        boolean agrees() {
            return outcome().equals(peersOutcome());
        }

        /** In words, with what both say. */
        String words() {
            return visit.name() + " | " + outcome() + " | " + peersOutcome();
        }

        /** How much longer a stage takes the peer, s, since another or since letting go; NaN where not both come to it. */
        double late(String stage, @Nullable String since) {
            return took(peers, stage, since) - took(ours, stage, since);
        }

        /** How long a stage takes the engine, likewise. */
        double took(String stage, @Nullable String since) {
            return took(ours, stage, since);
        }

        private static double took(Map<String, Double> times, String stage, @Nullable String since) {
            return times.getOrDefault(stage, Double.NaN) - (since == null ? 0 : times.getOrDefault(since, Double.NaN));
        }
    }

    /** An outcome: no stage was missed. */
    static final String WORKS = "works";

    private PeerCases() {}

    static List<Case> all() {
        List<Subject> subjects = List.of(
                Subject.of("heron"),
                Subject.of("spoiled/counterweight-heavy"),
                Subject.of("spoiled/heron-hangs-up"),
                Subject.of("spoiled/kicker-short"));
        Random random = new Random(SEED);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < CASES; i++) {
            // Three of five are the heron itself, its spoiled copies take turns.
            boolean spoiled = i % 5 >= 3;
            Subject subject = subjects.get(spoiled ? 1 + (2 * (i / 5) + i % 5 - 3) % 3 : 0);
            cases.add(visit(i + 1, subject, random));
        }
        return cases;
    }

    private static Case visit(int number, Subject subject, Random random) {
        JsonNode coins = subject.json().get("coins");
        JsonNode coin = coins.get(random.nextInt(coins.size()));
        LoneDrop drop = new LoneDrop(
                coin.get("mass").doubleValue() * between(random, 0.3, 1.1),
                coin.get("radius").doubleValue(),
                coin.get("play").doubleValue() / 2 * between(random, -0.95, 0.95),
                between(random, 0, 150),
                between(random, 0.2, 0.5),
                Math.exp(between(random, Math.log(0.1), Math.log(10))),
                Math.exp(between(random, Math.log(20), Math.log(400))));
        return new Case(number, subject, coin.get("code").stringValue(), drop);
    }

    private static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }
}
