package jackwork.cli;

import jackwork.app.bench.Bench;
import jackwork.bench.BucketForm;
import jackwork.bench.Forms;
import jackwork.bench.Kinds;
import jackwork.bench.Measured;
import jackwork.bench.Reading;
import jackwork.design.DesignReader;
import jackwork.design.NearestWord;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.parts.Assembler;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork bench measured}: the forms of {@code jackwork measure}, kept. */
@Command(
        name = "measured",
        mixinStandardHelpOptions = true,
        description = "Logs what was read at the bench; `bench use` puts it to use.")
final class BenchMeasured {

    @Command(name = "friction", description = "slopes at which one thing slid off another")
    int friction(@Mixin SlopeForm form, @Mixin WorkshopOption workshop, @Mixin EntryOptions entry) {
        List<Reading> readings = readings("slope", form.slopes);
        readings.add(new Reading("step", form.step));
        String about = form.one() + "," + form.other();
        return add(
                workshop.bench(),
                BadInputException.unless(() -> new Measured(entry.stamp(), "friction", about, readings)));
    }

    @Command(name = "kerf", description = "pieces cut at a known size")
    int kerf(@Mixin WidthForm form, @Mixin WorkshopOption workshop, @Mixin EntryOptions entry) {
        List<Reading> readings = new ArrayList<>();
        readings.add(new Reading("drawn", form.drawn));
        readings.add(new Reading("strips", form.strips));
        readings.addAll(readings("outside", form.outsides));
        readings.addAll(readings("hole", form.holes));
        readings.add(new Reading("step", form.step));
        return add(workshop.bench(), BadInputException.unless(() -> new Measured(entry.stamp(), "kerf", "", readings)));
    }

    @Command(name = "bucket", description = "weights at which it tips and falls back")
    int bucket(@Mixin BucketWeightsForm form, @Mixin EntryOptions entry) {
        return add(
                Bench.in(form.design),
                BadInputException.unless(() -> BucketForm.entry(
                        entry.stamp(),
                        Assembler.assemble(DesignReader.read(form.design)),
                        form.tips,
                        form.fallsBack,
                        form.arm,
                        form.step)));
    }

    @Command(name = "sheet", description = "thickness of a sheet, by calliper")
    int sheet(
            @Parameters(index = "0", paramLabel = "STOCK", description = "the workshop's name for it") String stock,
            @Parameters(index = "1..*", arity = "1..*", paramLabel = "MM", description = "two or more")
                    List<Double> sizes,
            @Option(names = "--step", paramLabel = "MM", defaultValue = "0.01", description = "of the calliper")
                    double step,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        WorkshopFile file = WorkshopReader.read(workshop.bench().workshop());
        return size(workshop.bench(), "sheet", stock, List.copyOf(file.sheets().keySet()), sizes, step, entry);
    }

    @Command(name = "rod", description = "diameter of a rod, by calliper")
    int rod(
            @Parameters(index = "0", paramLabel = "ROD", description = "the workshop's name for it") String rod,
            @Parameters(index = "1..*", arity = "1..*", paramLabel = "MM", description = "two or more")
                    List<Double> sizes,
            @Option(names = "--step", paramLabel = "MM", defaultValue = "0.01", description = "of the calliper")
                    double step,
            @Mixin WorkshopOption workshop,
            @Mixin EntryOptions entry) {
        WorkshopFile file = WorkshopReader.read(workshop.bench().workshop());
        return size(workshop.bench(), "rod", rod, List.copyOf(file.rods().keySet()), sizes, step, entry);
    }

    private static int size(
            Bench bench,
            String kind,
            String name,
            List<String> known,
            List<Double> sizes,
            double step,
            EntryOptions entry) {
        if (!known.contains(name)) {
            throw new BadInputException(
                    "read \"" + name + "\", expected a " + kind + " of workshop.yaml" + NearestWord.hint(name, known));
        }
        List<Reading> readings = readings("size", sizes);
        readings.add(new Reading("step", step));
        return add(bench, BadInputException.unless(() -> new Measured(entry.stamp(), kind, name, readings)));
    }

    private static List<Reading> readings(String name, List<Double> values) {
        return BadInputException.unless(() -> {
            List<Reading> readings = new ArrayList<>();
            values.forEach(value -> readings.add(new Reading(name, value)));
            return readings;
        });
    }

    private static int add(Bench bench, Measured measured) {
        BadInputException.unless(() -> {
            Forms.check(measured);
            return measured;
        });
        bench.log().add(Kinds.MEASURED, measured);
        List<Measured> same = bench.log().counting(Kinds.MEASURED).stream()
                .filter(other ->
                        other.kind().equals(measured.kind()) && other.about().equals(measured.about()))
                .toList();
        String place = Forms.place(measured.kind(), measured.about());
        try {
            System.out.println(place + ": " + BenchWords.value(Forms.of(same)));
        } catch (IllegalArgumentException e) {
            System.out.println(place + ": logged; " + e.getMessage());
        }
        return Outcome.FINE;
    }
}
