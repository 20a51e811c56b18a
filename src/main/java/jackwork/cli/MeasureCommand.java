package jackwork.cli;

import jackwork.bench.BucketByWeights;
import jackwork.bench.FrictionBySlope;
import jackwork.bench.KerfByPieces;
import jackwork.check.CoinSeat;
import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.stock.Uncertain;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code jackwork measure}. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description = "Turns what was read at the bench into the workshop's values.")
final class MeasureCommand {

    private static final String NEXT = "In workshop.yaml, in place of what stands there:";

    @Command(name = "friction", description = "from slopes at which one thing slid off another")
    int friction(@Mixin SlopeForm form) {
        Uncertain read = BadInputException.unless(() -> FrictionBySlope.of(SlopeForm.array(form.slopes), form.step));
        System.out.println("Friction of " + form.one() + " on " + form.other() + ": " + words(read) + ".");
        System.out.println(NEXT);
        System.out.println("friction:");
        System.out.println(
                "  - {between: [" + form.one() + ", " + form.other() + "], coefficient: " + entry(read) + "}");
        return Outcome.FINE;
    }

    @Command(name = "kerf", description = "from pieces cut at a known size")
    int kerf(@Mixin WidthForm form) {
        Uncertain read = BadInputException.unless(() -> KerfByPieces.of(
                form.drawn, form.strips, SlopeForm.array(form.outsides), SlopeForm.array(form.holes), form.step));
        System.out.println("Kerf: " + words(read) + " mm.");
        System.out.println(NEXT);
        System.out.println("laser:");
        System.out.println("  kerf: " + entry(read));
        return Outcome.FINE;
    }

    @Command(name = "bucket", description = "from the weights at which it tips and falls back")
    int bucket(@Mixin BucketWeightsForm form) {
        Assembly assembly = Assembler.assemble(DesignReader.read(form.design));
        BucketByWeights read = BadInputException.unless(
                () -> BucketByWeights.of(assembly, form.tips, form.fallsBack, form.arm, form.step));
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
