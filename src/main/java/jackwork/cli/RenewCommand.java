package jackwork.cli;

import jackwork.app.core.Renewal;
import jackwork.app.wire.StaleException;
import jackwork.design.Format;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork renew FOLDER}. */
@Command(
        name = "renew",
        description = "Makes files of an earlier format ones of today's, in one step that can be taken back.")
final class RenewCommand extends Subcommand {

    @Parameters(paramLabel = "FOLDER", description = "the workshop's folder, or one in it")
    private Path folder = Path.of("");

    @Option(names = "--look", description = "only say what would change")
    private boolean look;

    @Option(names = "--back", description = "take the last such step back: every file is again what it was")
    private boolean back;

    @Override
    public Integer call() throws IOException {
        if (look && back) {
            throw new BadInputException("read --look and --back, expected one of them");
        }
        Path workshop = Renewal.workshopOf(folder)
                .orElseThrow(() -> new BadInputException(
                        folder + " has no workshop.yaml, nor has a folder above; expected the folder of a workshop"));
        Renewal renewal = new Renewal(workshop);
        if (back) {
            tellBack(renewal.takeBack(), workshop);
            return Outcome.FINE;
        }
        Renewal.Told told = look ? renewal.look() : renewed(renewal, workshop);
        if (told.isNothing()) {
            System.out.println("Nothing to do: no file of " + workshop + " that could be changed is of a format before "
                    + Format.NOW + ".");
        } else {
            int files = told.files().size();
            list(
                    files + (files == 1 ? " file" : " files") + (look ? " would become" : " became") + " format "
                            + Format.NOW + ":",
                    told.files());
        }
        if (!told.lost().isEmpty()) {
            list((look ? "Would not be" : "Was not") + " carried over:", told.lost());
        }
        if (!told.isNothing()) {
            System.out.println();
            System.out.println(
                    look
                            ? "Nothing was written. Do it with: jackwork renew " + folder
                            : "Ask each design again what it does now: jackwork check DESIGN. Take it all back with: jackwork"
                                    + " renew --back " + folder);
        }
        return Outcome.FINE;
    }

    private static Renewal.Told renewed(Renewal renewal, Path workshop) throws IOException {
        try {
            return renewal.renew();
        } catch (StaleException e) {
            throw new BadInputException("files of " + workshop
                    + " were changed while the step was prepared, by another program or another such step; nothing was written,"
                    + " do it again");
        }
    }

    private static void tellBack(List<String> files, Path workshop) {
        if (files.isEmpty()) {
            throw new BadInputException("there is no step to take back in " + workshop);
        }
        list("Taken back; as they were before, byte for byte:", files);
    }

    private static void list(String what, List<String> lines) {
        System.out.println(what);
        lines.forEach(line -> System.out.println("    " + line));
    }
}
