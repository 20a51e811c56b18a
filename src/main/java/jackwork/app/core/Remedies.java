package jackwork.app.core;

import static jackwork.check.Sentence.say;

import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.Questions;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.design.Adjustable;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Looks for one number that settles a finding: the least change, of the numbers its remedy speaks of, with which it
 * passes over its whole spread and nothing that passed before stops doing so. Every proposal is computed, none is a
 * rule of thumb.
 */
public final class Remedies {

    private static final String WEIGHTS = "figure\\.weights\\..*\\.(mass|count)";
    private static final String COUNTERWEIGHT = "box\\.weights\\..*\\.(mass|count)";
    private static final String THROW = "box\\.lever\\.throw";

    /** Which numbers the remedy of a finding speaks of. */
    private static final Map<Topic, Pattern> NUMBERS = new EnumMap<>(Topic.class);

    static {
        NUMBERS.put(Topic.COMES_BACK, Pattern.compile(WEIGHTS));
        NUMBERS.put(Topic.RUNS_AHEAD, Pattern.compile(WEIGHTS));
        NUMBERS.put(Topic.FINGER_FORCE, Pattern.compile(WEIGHTS + "|" + THROW));
        NUMBERS.put(Topic.GESTURE_REACHED, Pattern.compile(THROW));
        NUMBERS.put(Topic.FULL_STROKE, Pattern.compile(THROW + "|figure\\.strings\\..*\\.slack|figure\\.stops\\..*"));
        NUMBERS.put(Topic.STRING_OVERPULLED, Pattern.compile("figure\\.strings\\..*\\.slack|" + THROW));
        NUMBERS.put(Topic.BUCKET_TWIST, Pattern.compile("box\\.coin-works\\.bucket\\.side-gap"));
        NUMBERS.put(Topic.BUCKET_RESETS, Pattern.compile(COUNTERWEIGHT));
        NUMBERS.put(Topic.COIN_TRIPS, Pattern.compile(COUNTERWEIGHT));
        NUMBERS.put(Topic.LEANS_ACROSS, Pattern.compile(COUNTERWEIGHT));
        NUMBERS.put(Topic.COIN_THROWN_CLEAR, Pattern.compile(THROW));
        NUMBERS.put(Topic.COIN_FITS_SLOT, Pattern.compile("box\\.coin-works\\.slot\\.(length|width)"));
        NUMBERS.put(Topic.CATCH_FREES, Pattern.compile("box\\.coin-works\\.bucket\\.tip"));
        NUMBERS.put(Topic.HEAP, Pattern.compile("box\\.coin-works\\.cash-room\\..*"));
    }

    /**
     * By how much a number that is 0 is moved, by its unit: no share of it leads away from there. Lengths and angles the
     * other way as well.
     */
    private static final Map<String, double[]> STEPS = Map.of(
            "mm", new double[] {0.2, 0.5, 1, 2, 3, 5, 8},
            "deg", new double[] {0.5, 1, 2, 5, 10, 15, 20},
            "g", new double[] {0.5, 1, 2, 3, 5, 8, 12, 16, 20, 30, 40, 60, 80});

    private static final double[] OTHER_STEPS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1};

    /** Shares of a number that are tried, the least change first; of whole numbers the nearest. */
    private static final double[] SHARES = {1.1, 0.9, 1.2, 0.8, 1.35, 0.7, 1.5, 0.6, 1.75, 0.5, 2, 0.35, 2.5, 3, 4};

    private final Workbench workbench;

    public Remedies(Workbench workbench) {
        this.workbench = workbench;
    }

    /** What there are numbers to try for. */
    static Set<Topic> topics() {
        return Collections.unmodifiableSet(NUMBERS.keySet());
    }

    /** Findings that do not pass and for which there are numbers to try. */
    static List<String> mendable(Design design, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.status() != Status.PASS)
                .map(Finding::id)
                .filter(id -> !numbers(design, id).isEmpty())
                .toList();
    }

    private static List<Adjustable.Setting> numbers(Design design, String finding) {
        Pattern pattern = NUMBERS.get(Topic.of(finding));
        return pattern == null
                ? List.of()
                : Adjustable.of(design).numbers().stream()
                        .filter(number -> pattern.matcher(number.path()).matches())
                        .toList();
    }

    /** The least change of one number that settles a finding. */
    public String remedyJson(String id, String finding) {
        if (!Topic.isId(finding)) {
            throw new BadRequestException("read \"" + finding + "\", expected the id of a finding, as full-stroke");
        }
        Design design = workbench.design(id);
        List<Finding> before = workbench.shown(id, design).check().findings();
        return OwnCores.use(workbench.longest(), () -> remedyJson(design, finding, before));
    }

    private static String remedyJson(Design design, String finding, List<Finding> before) {
        for (int round = 0; round < SHARES.length; round++) {
            for (Adjustable.Setting number : numbers(design, finding)) {
                double value = value(number, round);
                if (value != number.value() && settles(design, number.path(), value, finding, before)) {
                    return Json.compact(new Remedy(
                            finding,
                            say(
                                    "{} from {} to {}: then it passes",
                                    Wording.of(number.path()),
                                    measure(number, number.value()).bare(),
                                    measure(number, value)),
                            List.of(new Edit.Step(
                                    Edit.Kind.SET,
                                    number.path(),
                                    JsonNodeFactory.instance.numberNode(new BigDecimal(DesignEdit.words(value)))))));
                }
            }
        }
        return Json.compact(new Remedy(
                finding, say("no single number that was tried settles it without spoiling something else"), List.of()));
    }

    /** With as many decimals as the file writes. */
    private static Measure measure(Adjustable.Setting number, double value) {
        String written = DesignEdit.words(value);
        int point = written.indexOf('.');
        return Measure.of(value, number.unit()).to(point < 0 ? 0 : written.length() - point - 1);
    }

    private static double value(Adjustable.Setting number, int round) {
        if (number.value() == 0) {
            return fromNothing(number, round);
        }
        double share = SHARES[round];
        double value = number.value() * share;
        if (number.whole()) {
            double next = share > 1 ? Math.ceil(value) : Math.floor(value);
            return Math.max(0, next);
        }
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(1e-9, Math.abs(value)))) - 1);
        return Math.rint(value / step) * step;
    }

    /** Steps away from 0, the least first; of whole numbers 1, 2 and so on. 0 once there are no more. */
    private static double fromNothing(Adjustable.Setting number, int round) {
        if (number.whole()) {
            return round + 1;
        }
        double[] steps = STEPS.getOrDefault(number.unit(), OTHER_STEPS);
        boolean bothWays = number.unit().equals("mm") || number.unit().equals("deg");
        int at = bothWays ? round / 2 : round;
        if (at >= steps.length) {
            return 0;
        }
        return bothWays && round % 2 == 1 ? -steps[at] : steps[at];
    }

    private static boolean settles(Design design, String path, double value, String finding, List<Finding> before) {
        try {
            String text = DesignEdit.with(DesignReader.text(design.folder()), Map.of(path, value));
            Design other = DesignReader.read(design.folder(), text);
            boolean quickly = Questions.askQuickly(Subject.asNumbered(other)).stream()
                    .noneMatch(f -> f.id().equals(finding) && f.status() != Status.PASS);
            return quickly && spoilsNothing(DesignCheck.of(other).findings(), finding, before);
        } catch (DesignException | MechanismException | PartException | MakeException e) {
            return false;
        }
    }

    private static boolean spoilsNothing(List<Finding> after, String finding, List<Finding> before) {
        Map<String, Status> was = new LinkedHashMap<>();
        before.forEach(f -> was.put(f.id(), f.status()));
        List<String> worse = new ArrayList<>();
        for (Finding f : after) {
            Status old = Optional.ofNullable(was.get(f.id())).orElse(Status.PASS);
            boolean mustPass = f.id().equals(finding);
            if (f.status().compareTo(mustPass ? Status.PASS : old) > 0) {
                worse.add(Objects.toString(f.id()));
            }
        }
        return worse.isEmpty();
    }
}
