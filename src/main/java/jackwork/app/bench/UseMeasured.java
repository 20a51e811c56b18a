package jackwork.app.bench;

import jackwork.app.core.DesignCheck;
import jackwork.app.history.Turn;
import jackwork.bench.BenchException;
import jackwork.bench.BenchLog;
import jackwork.bench.Forms;
import jackwork.bench.Kinds;
import jackwork.bench.Measured;
import jackwork.check.Finding;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.design.Inside;
import jackwork.design.WholeFile;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.design.YamlDifference;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What was measured put into {@code workshop.yaml}, and what that does to the findings.
 *
 * @param values by what was measured: {@code friction:coin,wood}
 * @param skipped what could not be used, with why
 * @param changes of the file's values
 * @param before the file's text
 * @param after its text with the values in it
 */
public record UseMeasured(
        Map<String, Uncertain> values,
        Map<String, String> skipped,
        List<YamlDifference.Change> changes,
        String before,
        String after) {

    /**
     * A finding that another workshop's numbers move.
     *
     * @param now null when the question is not asked any more
     * @param then null when it was not asked before
     */
    public record Moved(
            Sentence question,
            @Nullable Finding then,
            @Nullable Finding now) {

        /** Whether its status is another. */
        public boolean turned() {
            return status(then) != status(now);
        }

        private static @Nullable Status status(@Nullable Finding finding) {
            return finding == null ? null : finding.status();
        }
    }

    /**
     * One design before and after.
     *
     * @param trouble why it could not be checked; then there are no verdicts
     */
    public record Effect(String design, String then, String now, List<Moved> moved, String trouble) {}

    /**
     * @param wanted what to use, as {@code kerf} or {@code friction:coin,wood}; all that has readings enough when empty
     * @param since earlier measurements are left out
     * @throws BenchException when something wanted was not measured, or two ways of measuring say the same number
     */
    public static UseMeasured of(Path workshop, BenchLog log, List<String> wanted, Instant since) {
        Map<String, List<Measured>> groups = BenchReport.grouped(log.counting(Kinds.MEASURED).stream()
                .filter(measured -> !measured.stamp().at().isBefore(since))
                .toList());
        for (String word : wanted) {
            if (groups.keySet().stream().noneMatch(group -> matches(group, word))) {
                throw new BenchException("nothing called \"" + word + "\" was measured; the log has "
                        + (groups.isEmpty() ? "nothing" : String.join(", ", groups.keySet())));
            }
        }
        String before = WorkshopReader.text(workshop);
        String after = before;
        Map<String, Uncertain> values = new LinkedHashMap<>();
        Map<String, String> skipped = new LinkedHashMap<>();
        Map<String, String> places = new LinkedHashMap<>();
        for (Map.Entry<String, List<Measured>> group : groups.entrySet()) {
            String name = group.getKey();
            if (!wanted.isEmpty() && wanted.stream().noneMatch(word -> matches(name, word))) {
                continue;
            }
            Measured first = group.getValue().get(0);
            try {
                Uncertain value = Forms.of(group.getValue());
                String other = places.put(Forms.place(first.kind(), first.about()), name);
                if (other != null) {
                    throw new BenchException(
                            "both " + other + " and " + name + " say what one number is; choose one of them");
                }
                after = Forms.edit(after, first.kind(), first.about(), value);
                values.put(name, value);
            } catch (IllegalArgumentException e) {
                skipped.put(name, String.valueOf(e.getMessage()));
            }
        }
        List<YamlDifference.Change> changes = YamlDifference.between(WorkshopReader.FILE, before, after);
        return new UseMeasured(values, skipped, changes, before, after);
    }

    private static boolean matches(String group, String word) {
        return group.equals(word) || group.startsWith(word + ":");
    }

    /** What it does to a design of the workshop. */
    public Effect on(Path workshop, String design) {
        try {
            Design read = DesignReader.read(workshop.resolve(design));
            WorkshopFile then = WorkshopReader.parse(before);
            WorkshopFile now = WorkshopReader.parse(after);
            DesignCheck old = DesignCheck.of(read.withWorkshop(then));
            DesignCheck fresh = DesignCheck.of(read.withWorkshop(now));
            return new Effect(design, old.verdict(), fresh.verdict(), moved(old, fresh), "");
        } catch (DesignException | MechanismException | PartException | MakeException e) {
            return new Effect(design, "", "", List.of(), String.valueOf(e.getMessage()));
        }
    }

    /** What two checks answer differently. */
    static List<Moved> moved(DesignCheck old, DesignCheck fresh) {
        Map<String, Finding> then = byQuestion(old);
        Map<String, Finding> now = byQuestion(fresh);
        List<Moved> moved = new ArrayList<>();
        now.forEach((key, finding) -> {
            Finding was = then.remove(key);
            if (was == null || was.status() != finding.status() || !Objects.equals(was.margin(), finding.margin())) {
                moved.add(new Moved(finding.question(), was, finding));
            }
        });
        then.values().forEach(gone -> moved.add(new Moved(gone.question(), gone, null)));
        return moved;
    }

    private static Map<String, Finding> byQuestion(DesignCheck check) {
        Map<String, Finding> findings = new LinkedHashMap<>();
        check.findings().forEach(finding -> findings.putIfAbsent(finding.id() + " " + finding.question(), finding));
        return findings;
    }

    /**
     * Into the file, whole or not at all.
     *
     * @throws BenchException when it was changed meanwhile
     */
    public void write(Path workshop) throws IOException {
        Turn.take(workshop, () -> {
            if (!WorkshopReader.text(workshop).equals(before)) {
                throw new BenchException("workshop.yaml was changed meanwhile; nothing was written. Do it again");
            }
            Inside.require(workshop, workshop.resolve(WorkshopReader.FILE));
            WholeFile.write(workshop.resolve(WorkshopReader.FILE), after);
        });
    }
}
