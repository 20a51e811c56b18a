package jackwork.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Weights laid into a bucket, as typed. */
final class BucketWeightsForm {

    @Parameters(paramLabel = "DESIGN", description = "the design's folder")
    Path design = Path.of("");

    @Option(names = "--tips", paramLabel = "G", required = true, description = "least mass that tips it")
    double tips;

    @Option(
            names = "--falls-back",
            paramLabel = "G",
            required = true,
            description = "greatest mass at which it falls back; 0 when it never does")
    double fallsBack;

    @Option(
            names = "--arm",
            paramLabel = "MM",
            required = true,
            description = "from the pivot to where the mass lies, level")
    double arm;

    @Option(
            names = "--step",
            paramLabel = "G",
            defaultValue = "0.1",
            description = "between the masses tried; ${DEFAULT-VALUE} when absent")
    double step;
}
