package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.Revision;
import java.io.IOException;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code jackwork bench freeze DESIGN --note TEXT}. */
@Command(name = "freeze", description = "Keeps a design as it stands, file by file, as its next revision.")
final class BenchFreeze extends DesignCommand {

    @Mixin
    private EntryOptions entry = new EntryOptions();

    @Override
    public Integer call() throws IOException {
        Bench bench = Bench.in(design);
        Optional<Revision> last = bench.log().last(bench.id(design));
        Revision frozen = bench.freeze(design, entry.stamp().note(), entry.at());
        System.out.println(frozen.name() + ": " + frozen.files().size() + " files kept");
        if (last.isPresent()) {
            System.out.println("Since " + last.get().name() + ":");
            bench.compare(last.get().name(), frozen.name()).stream()
                    .flatMap(difference -> difference.words().stream())
                    .forEach(line -> System.out.println("    " + line));
        }
        return Outcome.FINE;
    }
}
