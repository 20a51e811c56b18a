package jackwork.builds;

import jackwork.check.Words;
import jackwork.design.Adjustable;
import jackwork.design.AdjusterEntry;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.geometry.Wanted;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.MechanismException;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.PartException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * What a maker sets at the bench until the piece runs, with the design as it is at each of its steps.
 *
 * @param unit of its number
 * @param drawn that number as designed
 * @param settings nearest to that first, and not that
 */
public record Adjuster(String name, AdjusterEntry entry, String unit, double drawn, List<Setting> settings) {

    /** @param steps up from what is drawn, negative down */
    record Setting(int steps, Assembly assembly) {}

    /** What was set, and how far. */
    public record Turn(String adjuster, int steps) {}

    /**
     * Of a design, in the order of its file.
     *
     * @throws DesignException when the design cannot be read or put together at one of their steps
     */
    public static List<Adjuster> of(Design design) {
        Map<String, AdjusterEntry> entries = design.file().adjusters();
        if (entries.isEmpty()) {
            return List.of();
        }
        List<Adjustable.Setting> numbers = Adjustable.of(design).numbers();
        List<Adjuster> adjusters = new ArrayList<>();
        entries.forEach((name, entry) -> {
            Adjustable.Setting number = numbers.stream()
                    .filter(one -> one.path().equals(entry.number()))
                    .findFirst()
                    .orElseThrow();
            adjusters.add(
                    new Adjuster(name, entry, number.unit(), number.value(), settings(design, name, entry, number)));
        });
        return adjusters;
    }

    /** Steps that lead out of what the number may be are not gone. */
    private static List<Setting> settings(Design design, String name, AdjusterEntry entry, Adjustable.Setting number) {
        Path file = design.folder().resolve(DesignReader.FILE).toAbsolutePath().normalize();
        String text = DesignReader.text(design.folder());
        List<Setting> settings = new ArrayList<>();
        for (int steps = -entry.down(); steps <= entry.up(); steps++) {
            Wanted.goOn();
            double to = entry.at(number.value(), steps);
            if (steps == 0 || to < number.field().least() || to > number.field().most()) {
                continue;
            }
            String value = DesignEdit.words(to);
            String other = DesignEdit.with(text, entry.number(), value);
            try {
                Design set = DesignReader.readLike(design, Map.of(file, other));
                Assembly assembly = Assembler.assemble(set);
                MechanismCompiler.compile(assembly);
                settings.add(new Setting(steps, assembly));
            } catch (DesignException | MechanismException | PartException e) {
                throw DesignException.of(
                        "adjusters." + name,
                        "with " + entry.number() + " at " + value + " the design cannot be put together: "
                                + e.getMessage() + "; expected steps that it can go");
            }
        }
        settings.sort(Comparator.comparingInt((Setting setting) -> Math.abs(setting.steps))
                .thenComparing(setting -> -setting.steps));
        return settings;
    }

    /** So many steps, as a tuning card says them: {@code washers on the tail: 2 up, to 54 g}. */
    String words(int steps) {
        double to = entry.at(drawn, steps);
        return entry.what() + ": " + Math.abs(steps) + (steps > 0 ? " up" : " down") + ", to " + Words.number(to)
                + (unit.equals("1") ? "" : " " + unit);
    }
}
