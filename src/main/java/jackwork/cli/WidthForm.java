package jackwork.cli;

import java.util.List;
import picocli.CommandLine.Option;

/** Widths of pieces cut at a known size, as typed. */
final class WidthForm {

    @Option(names = "--drawn", paramLabel = "MM", required = true, description = "size in the drawing")
    double drawn;

    @Option(
            names = "--strips",
            paramLabel = "N",
            defaultValue = "1",
            description = "into which it was cut and pushed together again; ${DEFAULT-VALUE} when absent")
    int strips;

    @Option(names = "--outside", paramLabel = "MM", split = ",", description = "widths over pieces")
    List<Double> outsides = List.of();

    @Option(names = "--hole", paramLabel = "MM", split = ",", description = "widths in holes")
    List<Double> holes = List.of();

    @Option(
            names = "--step",
            paramLabel = "MM",
            defaultValue = "0.01",
            description = "what the calliper can tell apart; ${DEFAULT-VALUE} when absent")
    double step;
}
