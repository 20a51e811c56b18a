package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.app.bench.BenchJson;
import jackwork.app.bench.UseMeasured;
import jackwork.app.core.DesignCheck;
import jackwork.check.Finding;
import jackwork.design.DesignFolders;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench use [WHAT] [--apply]}. */
@Command(name = "use", description = "Puts measured values into workshop.yaml and says what that does to the findings.")
final class BenchUse extends Subcommand {

    @Parameters(
            paramLabel = "WHAT",
            arity = "0..*",
            description = "kerf, friction:coin,wood, sheet:birch-3, ...; all that has readings enough when absent")
    private List<String> wanted = List.of();

    @Option(names = "--on", paramLabel = "DESIGN", description = "only this one is checked; may be given again")
    private List<Path> designs = List.of();

    @Option(names = "--since", paramLabel = "DAY", description = "leave earlier measurements out")
    private @Nullable String since;

    @Option(names = "--apply", description = "write them into workshop.yaml; nothing else of it changes")
    private boolean apply;

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() throws IOException {
        Bench bench = designs.isEmpty() ? workshop.bench() : Bench.in(designs.get(0));
        Instant from = since == null ? Instant.MIN : EntryOptions.instant("--since", since);
        UseMeasured use = UseMeasured.of(bench.workshop(), bench.log(), wanted, from);
        List<String> names = designs.isEmpty()
                ? DesignFolders.list(bench.workshop())
                : designs.stream().map(bench::id).toList();
        List<UseMeasured.Effect> effects = new ArrayList<>();
        if (!use.values().isEmpty()) {
            names.forEach(name -> effects.add(use.on(bench.workshop(), name)));
        }
        boolean written = apply && !use.before().equals(use.after());
        if (written) {
            use.write(bench.workshop());
        }
        if (json) {
            System.out.print(BenchJson.use(use, effects, written));
        } else {
            print(use, effects, written);
        }
        return Outcome.FINE;
    }

    private static void print(UseMeasured use, List<UseMeasured.Effect> effects, boolean written) {
        use.values().forEach((name, value) -> System.out.println(name + ": " + BenchWords.value(value)));
        use.skipped().forEach((name, why) -> System.out.println(name + ": not used, " + why));
        use.changes()
                .forEach(change -> System.out.println("    " + change.path() + ": "
                        + (change.before() == null ? "nothing" : change.before()) + " -> "
                        + (change.after() == null ? "nothing" : change.after())));
        for (UseMeasured.Effect effect : effects) {
            if (!effect.trouble().isEmpty()) {
                System.out.println(effect.design() + ": cannot be checked: " + effect.trouble());
                continue;
            }
            System.out.println(effect.design() + ": "
                    + (effect.then().equals(effect.now()) ? "still " : DesignCheck.words(effect.then()) + ", now ")
                    + DesignCheck.words(effect.now()) + "; "
                    + effect.moved().size() + " margins moved");
            effect.moved().stream()
                    .filter(UseMeasured.Moved::turned)
                    .forEach(moved -> System.out.println(
                            "    " + moved.question() + " " + status(moved.then()) + " -> " + status(moved.now())));
        }
        System.out.println(
                written
                        ? "Written to workshop.yaml."
                        : use.before().equals(use.after())
                                ? "workshop.yaml says all this already; nothing to write."
                                : "Nothing written yet; with --apply they are.");
    }

    private static String status(@Nullable Finding finding) {
        return finding == null ? "not asked" : finding.status().word();
    }
}
