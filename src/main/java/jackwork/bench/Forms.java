package jackwork.bench;

import jackwork.stock.Uncertain;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Every way of measuring that the log knows. */
public final class Forms {

    private static final List<Form> ALL =
            List.of(new KerfForm(), new FrictionForm(), new BucketForm(), SizeForm.SHEET, SizeForm.ROD);

    private Forms() {}

    public static List<String> kinds() {
        return ALL.stream().map(Form::kind).toList();
    }

    /** @throws IllegalArgumentException when it cannot be what it says */
    public static void check(Measured measured) {
        Form form = named(measured.kind());
        for (Reading reading : measured.readings()) {
            if (!form.names().contains(reading.name())) {
                throw new IllegalArgumentException("read " + reading.name() + ", expected readings of " + form.kind()
                        + ": " + String.join(", ", form.names()));
            }
        }
        form.check(measured);
    }

    /**
     * All measurements of one thing as one value.
     *
     * @throws IllegalArgumentException when there are too few readings in them
     */
    public static Uncertain of(List<Measured> same) {
        return named(same.get(0).kind()).of(same);
    }

    /** Where in {@code workshop.yaml} it belongs: {@code laser.kerf}. */
    public static String place(String kind, String about) {
        return named(kind).place(about);
    }

    /** The text of {@code workshop.yaml} with the value in its place. */
    public static String edit(String workshop, String kind, String about, Uncertain value) {
        return named(kind).edit(workshop, about, value);
    }

    static Form named(String kind) {
        return ALL.stream()
                .filter(form -> form.kind().equals(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "read \"" + kind + "\", expected one of " + String.join(", ", kinds())));
    }

    /** The readings of one name in all of them. */
    static double[] all(List<Measured> same, String name) {
        return same.stream()
                .flatMapToDouble(measured -> Arrays.stream(measured.all(name)))
                .toArray();
    }

    /** The coarsest instrument's. */
    static double coarsest(List<Measured> same, ToDoubleFunction<Measured> step) {
        return same.stream().mapToDouble(step).max().orElse(0);
    }

    static void requireStep(Measured measured) {
        double step = measured.one("step");
        if (!(step >= 0 && step < 100)) {
            throw new IllegalArgumentException("the step reads " + step + ", expected 0 or more and less than 100");
        }
    }
}
