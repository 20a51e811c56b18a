package jackwork.cli;

import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Slopes at which one thing slid off another, as typed. */
final class SlopeForm {

    @Option(
            names = "--between",
            paramLabel = "A,B",
            split = ",",
            required = true,
            description = "the two surfaces, as `jackwork stock` names them")
    List<String> between = List.of();

    @Option(
            names = "--step",
            paramLabel = "DEGREES",
            defaultValue = "0.5",
            description = "what the protractor can tell apart; ${DEFAULT-VALUE} when absent")
    double step;

    @Parameters(paramLabel = "SLOPE", arity = "1..*", description = "degrees, two or more")
    List<Double> slopes = List.of();

    String one() {
        requireTwo();
        return between.get(0);
    }

    String other() {
        requireTwo();
        return between.get(1);
    }

    private void requireTwo() {
        if (between.size() != 2) {
            throw new BadInputException("--between reads " + between + ", expected two surfaces: coin,wood");
        }
    }

    static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(number -> number).toArray();
    }
}
