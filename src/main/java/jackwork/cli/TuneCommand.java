package jackwork.cli;

import jackwork.app.history.Turn;
import jackwork.builds.FreeNumber;
import jackwork.builds.Tune;
import jackwork.design.DesignEdit;
import jackwork.design.DesignReader;
import jackwork.design.Inside;
import jackwork.design.WholeFile;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork tune DESIGN --free PATH=LOW..HIGH}. */
@Command(name = "tune", description = "Which number to change so that more pieces work.")
final class TuneCommand extends DesignCommand {

    private static final Pattern FREE = Pattern.compile("([a-z0-9.-]+)=(-?[0-9.]+)\\.\\.(-?[0-9.]+)");

    @Option(
            names = "--free",
            paramLabel = "PATH=LOW..HIGH",
            required = true,
            description = "a number that may change, and its limits: box.lever.throw=8..16; may be given again")
    private List<String> free = List.of();

    @Option(names = "--builds", paramLabel = "N", description = "on which before and after are told; 100 when absent")
    private int builds = 100;

    @Option(names = "--seed", paramLabel = "S", description = "1 when absent")
    private long seed = 1;

    @Option(names = "--apply", description = "write the numbers into the design file; nothing else of it changes")
    private boolean apply;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (builds < 10 || builds > 100_000) {
            throw new BadInputException("--builds reads " + builds + ", expected 10 to 100000");
        }
        List<FreeNumber> numbers = new ArrayList<>();
        for (String word : free) {
            numbers.add(number(word));
        }
        String before = DesignReader.text(design);
        int threads = Runtime.getRuntime().availableProcessors();
        Tune.Proposal proposal =
                new Tune(design, numbers, seed, threads, line -> System.err.println("  " + line)).run(builds);
        List<String> changes = proposal.numbers().entrySet().stream()
                .map(entry -> entry.getKey() + ": " + DesignEdit.words(entry.getValue()))
                .toList();
        System.out.println("Set " + String.join(" and ", changes) + ": then "
                + proposal.after().passes() + " of "
                + proposal.after().builds() + " builds pass with every coin, where "
                + proposal.before().passes()
                + " of " + proposal.before().builds() + " did.");
        System.out.println("Before: " + proposal.before().words() + ".");
        System.out.println("After:  " + proposal.after().words() + ".");
        if (apply) {
            Path file = Files.isDirectory(design) ? design.resolve("design.yaml") : design;
            Path workshop = WorkshopReader.folderOf(file.toAbsolutePath()).orElseThrow();
            Turn.take(workshop, () -> {
                if (!DesignReader.text(file).equals(before)) {
                    throw new BadInputException(
                            file + " was changed while numbers were looked for; nothing was written. Do it again");
                }
                Inside.require(workshop, file);
                WholeFile.write(file, proposal.text());
            });
            System.out.println("Written to " + file + ".");
        } else {
            System.out.println("In " + design.resolve("design.yaml") + ", under change:");
            changes.forEach(change -> System.out.println("  " + change));
        }
        return Outcome.FINE;
    }

    private static FreeNumber number(String word) {
        Matcher matcher = FREE.matcher(word);
        if (!matcher.matches()) {
            throw new BadInputException(
                    "--free reads \"" + word + "\", expected a path and limits: box.lever.throw=8..16");
        }
        try {
            double low = Double.parseDouble(matcher.group(2));
            double high = Double.parseDouble(matcher.group(3));
            if (low < high) {
                return new FreeNumber(matcher.group(1), low, high);
            }
        } catch (NumberFormatException e) {
            // Told below, with the same words.
        }
        throw new BadInputException("--free reads \"" + word + "\", expected its limits as LOW..HIGH, LOW below HIGH");
    }
}
