package jackwork.price;

import jackwork.design.WorkshopFile;
import jackwork.stock.Operations;
import jackwork.stock.PayNumbers;
import jackwork.stock.Uncertain;
import java.util.ArrayList;
import java.util.List;

/**
 * A number that the answer rests on.
 *
 * @param name its path in workshop.yaml, below {@code pay}; or {@code times} and an operation
 * @param what it is, in words
 */
public record KnownNumber(String name, String what, Uncertain number) {

    /** All that time and money depend on in a workshop. */
    public static List<KnownNumber> of(WorkshopFile workshop) {
        return of(Rates.of(workshop));
    }

    static List<KnownNumber> of(Rates rates) {
        List<KnownNumber> numbers = new ArrayList<>();
        rates.all().forEach((name, number) -> numbers.add(new KnownNumber(name, what(name), number)));
        return numbers;
    }

    private static String what(String name) {
        if (name.startsWith("times.")) {
            return Operations.catalogue()
                    .find(name.substring("times.".length()))
                    .map(operation -> operation.what())
                    .orElse("");
        }
        String known = name.replaceFirst("^(channels\\.[a-z]+)\\..*\\.([a-z-]+)$", "$1.$2");
        return PayNumbers.catalogue().find(known).map(number -> number.what()).orElse("as paid");
    }
}
