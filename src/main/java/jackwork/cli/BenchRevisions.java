package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.app.bench.BenchJson;
import jackwork.app.bench.RevisionDifference;
import jackwork.bench.Revision;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code jackwork bench revisions DESIGN [--compare A,B]}. */
@Command(name = "revisions", description = "Lists a design's frozen states, or says what differs between two.")
final class BenchRevisions extends DesignCommand {

    @Option(names = "--compare", paramLabel = "A,B", split = ",", description = "the numbers of two revisions")
    private @Nullable List<Integer> compare;

    @Option(names = "--json", description = "one JSON object on stdout")
    private boolean json;

    @Override
    public Integer call() {
        Bench bench = Bench.in(design);
        String id = bench.id(design);
        if (compare != null) {
            return compare(bench, id, compare);
        }
        List<Revision> revisions = new ArrayList<>(bench.log().revisions());
        revisions.removeIf(revision -> !revision.name().design().equals(id));
        if (json) {
            System.out.print(BenchJson.revisions(revisions));
        } else {
            revisions.forEach(revision -> System.out.println(revision.name() + "  " + revision.at() + "  "
                    + revision.title() + (revision.note().isEmpty() ? "" : ": " + revision.note())));
        }
        return Outcome.FINE;
    }

    private int compare(Bench bench, String id, List<Integer> numbers) {
        if (numbers.size() != 2) {
            throw new BadInputException("--compare reads " + numbers + ", expected two revisions: 1,2");
        }
        List<RevisionDifference> differences = bench.compare(
                bench.revision(id, numbers.get(0)).name(),
                bench.revision(id, numbers.get(1)).name());
        if (json) {
            System.out.print(BenchJson.differences(differences));
        } else {
            differences.stream()
                    .flatMap(difference -> difference.words().stream())
                    .forEach(System.out::println);
        }
        return Outcome.FINE;
    }
}
