package jackwork.cli;

import jackwork.app.bench.BenchJson;
import jackwork.bench.BenchLog;
import jackwork.bench.Kinds;
import jackwork.bench.LogKind;
import jackwork.bench.Logged;
import jackwork.bench.Stamp;
import jackwork.bench.Stamped;
import jackwork.design.NearestWord;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench list KIND}. */
@Command(name = "list", description = "Entries of one kind, with their numbers.")
final class BenchList extends Subcommand {

    @Parameters(
            paramLabel = "KIND",
            description = "pieces, happenings, takings, trials, timings, measured or predictions")
    private String name = "";

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() {
        list(workshop.bench().log(), kind(name), json);
        return Outcome.FINE;
    }

    static LogKind<?> kind(String name) {
        return Kinds.named(name)
                .orElseThrow(() -> new BadInputException("read \"" + name + "\", expected one of "
                        + String.join(", ", Kinds.names()) + NearestWord.hint(name, Kinds.names())));
    }

    private static <T extends Stamped> void list(BenchLog log, LogKind<T> kind, boolean json) {
        List<Logged<T>> entries = log.list(kind);
        if (json) {
            System.out.print(BenchJson.entries(kind, entries));
            return;
        }
        for (Logged<T> logged : entries) {
            Stamp stamp = logged.entry().stamp();
            StringBuilder line = new StringBuilder(logged.number() + "  " + stamp.at());
            kind.fields(logged.entry()).stream()
                    .filter(field -> !field.isEmpty())
                    .forEach(field -> line.append("  ").append(field));
            line.append(stamp.note().isEmpty() ? "" : "  (" + stamp.note() + ")");
            System.out.println(line + (logged.counts() ? "" : "  STRUCK: " + logged.struck()));
        }
    }
}
