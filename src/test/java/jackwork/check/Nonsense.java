package jackwork.check;

import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Demo designs with other numbers, read without writing anything, and what one question says of them. */
final class Nonsense {

    private static final Path DEMO = Path.of("demo").toAbsolutePath().normalize();

    private Nonsense() {}

    /** How it turned out; a design that cannot be read or put together is refused. */
    enum Verdict {
        PASSES,
        DOUBTFUL,
        FAILS,
        REFUSED
    }

    /** @param changes as under {@code change:}, a path and its value */
    static Subject changed(String design, String... changes) throws IOException {
        Path file = DEMO.resolve(design).resolve(DesignReader.FILE);
        StringBuilder text = new StringBuilder(Files.readString(file)).append("\nchange:\n");
        for (String change : changes) {
            text.append("  ").append(change).append('\n');
        }
        return Subject.asNumbered(DesignReader.read(DEMO.resolve(design), text.toString()));
    }

    /** With another text in one of its files. */
    static Subject replaced(String design, String file, String from, String to) throws IOException {
        Path path = DEMO.resolve(file);
        String text = Files.readString(path);
        if (!text.contains(from)) {
            throw new IllegalStateException(file + " does not hold \"" + from + "\"");
        }
        return Subject.asNumbered(DesignReader.read(DEMO.resolve(design), Map.of(path, text.replace(from, to))));
    }

    /** Pressed at the strongest with just so many newtons. */
    static Subject pressed(String design, String newtons) throws IOException {
        return replaced(
                design,
                "workshop.yaml",
                "strongest: {value: 60, low: 40, high: 80",
                "strongest: {value: %s, low: %s, high: %s".formatted(newtons, newtons, newtons));
    }

    interface Reading {
        Subject subject() throws IOException;
    }

    /** The worst that a question says. */
    static Verdict ask(Question question, Reading reading) throws IOException {
        try {
            Subject subject = reading.subject();
            List<Finding> findings = question.appliesTo(subject) ? question.ask(subject) : List.of();
            if (findings.stream().anyMatch(finding -> finding.status() == Status.FAIL)) {
                return Verdict.FAILS;
            }
            return findings.stream().anyMatch(finding -> finding.status() == Status.DOUBTFUL)
                    ? Verdict.DOUBTFUL
                    : Verdict.PASSES;
        } catch (DesignException | PartException | MechanismException e) {
            return Verdict.REFUSED;
        }
    }

    static boolean isNo(Verdict verdict) {
        return verdict == Verdict.FAILS || verdict == Verdict.REFUSED;
    }

    static String place(double x, double y) {
        return String.format(Locale.ROOT, "[%.4f, %.4f]", x, y);
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }
}
