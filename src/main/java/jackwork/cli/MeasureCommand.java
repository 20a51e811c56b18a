package jackwork.cli;

import jackwork.bench.BucketByWeights;
import jackwork.bench.FrictionBySlope;
import jackwork.bench.KerfByPieces;
import jackwork.check.CoinSeat;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Uncertain;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork measure}. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description = "Turns what was read at the bench into the workshop's values.")
final class MeasureCommand {

    private static final String NEXT = "In workshop.yaml, in place of what stands there:";

    @Command(name = "friction", description = "from slopes at which one thing slid off another")
    int friction(
            @Option(
                            names = "--between",
                            paramLabel = "A,B",
                            split = ",",
                            required = true,
                            description = "the two surfaces, as `jackwork stock` names them")
                    List<String> between,
            @Option(
                            names = "--step",
                            paramLabel = "DEGREES",
                            defaultValue = "0.5",
                            description = "what the protractor can tell apart; ${DEFAULT-VALUE} when absent")
                    double step,
            @Parameters(paramLabel = "SLOPE", description = "degrees, two or more") List<Double> slopes) {
        if (between.size() != 2) {
            throw new BadInputException("--between reads " + between + ", expected two surfaces: coin,wood");
        }
        Uncertain read = read(() -> FrictionBySlope.of(array(slopes), step));
        System.out.println("Friction of " + between.get(0) + " on " + between.get(1) + ": " + words(read) + ".");
        System.out.println(NEXT);
        System.out.println("friction:");
        System.out.println(
                "  - {between: [" + between.get(0) + ", " + between.get(1) + "], coefficient: " + entry(read) + "}");
        return Outcome.FINE;
    }

    @Command(name = "kerf", description = "from pieces cut at a known size")
    int kerf(
            @Option(names = "--drawn", paramLabel = "MM", required = true, description = "size in the drawing")
                    double drawn,
            @Option(
                            names = "--strips",
                            paramLabel = "N",
                            defaultValue = "1",
                            description =
                                    "into which it was cut and pushed together again; ${DEFAULT-VALUE} when absent")
                    int strips,
            @Option(names = "--outside", paramLabel = "MM", split = ",", description = "widths over pieces")
                    List<Double> outsides,
            @Option(names = "--hole", paramLabel = "MM", split = ",", description = "widths in holes")
                    List<Double> holes,
            @Option(
                            names = "--step",
                            paramLabel = "MM",
                            defaultValue = "0.01",
                            description = "what the calliper can tell apart; ${DEFAULT-VALUE} when absent")
                    double step) {
        Uncertain read = read(() -> KerfByPieces.of(
                drawn,
                strips,
                array(outsides == null ? List.of() : outsides),
                array(holes == null ? List.of() : holes),
                step));
        System.out.println("Kerf: " + words(read) + " mm.");
        System.out.println(NEXT);
        System.out.println("laser:");
        System.out.println("  kerf: " + entry(read));
        return Outcome.FINE;
    }

    @Command(name = "bucket", description = "from the weights at which it tips and falls back")
    int bucket(
            @Parameters(paramLabel = "DESIGN", description = "the design's folder") Path design,
            @Option(names = "--tips", paramLabel = "G", required = true, description = "least mass that tips it")
                    double tips,
            @Option(
                            names = "--falls-back",
                            paramLabel = "G",
                            required = true,
                            description = "greatest mass at which it falls back; 0 when it never does")
                    double fallsBack,
            @Option(
                            names = "--arm",
                            paramLabel = "MM",
                            required = true,
                            description = "from the pivot to where the mass lies, level")
                    double arm,
            @Option(
                            names = "--step",
                            paramLabel = "G",
                            defaultValue = "0.1",
                            description = "between the masses tried; ${DEFAULT-VALUE} when absent")
                    double step) {
        Assembly assembly = Assembler.assemble(DesignReader.read(design));
        BucketByWeights read = read(() -> BucketByWeights.of(assembly, tips, fallsBack, arm, step));
        double predicted = CoinSeat.closingMoment(assembly, 0);
        System.out.printf(
                Locale.ROOT,
                "It closes with %.3f N·mm, give or take %.3f; by the drawing %.3f N·mm.%n",
                read.closing(),
                read.uncertainty(),
                predicted);
        System.out.printf(
                Locale.ROOT,
                "Its bearing holds back %.3f N·mm: a coefficient of %.3f, reckoned with %.3f.%n",
                read.friction(),
                read.coefficient(),
                assembly.coinWorks().bearingFriction().coefficient().value());
        return Outcome.FINE;
    }

    private interface Reading<T> {
        T take();
    }

    private static <T> T read(Reading<T> reading) {
        try {
            return reading.take();
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(number -> number).toArray();
    }

    private static String words(Uncertain read) {
        return String.format(Locale.ROOT, "%.3f (%.3f to %.3f)", read.value(), read.low(), read.high());
    }

    private static String entry(Uncertain read) {
        return String.format(
                Locale.ROOT,
                "{value: %.3f, low: %.3f, high: %.3f, basis: measured, source: \"%s\"}",
                read.value(),
                read.low(),
                read.high(),
                read.source());
    }
}
