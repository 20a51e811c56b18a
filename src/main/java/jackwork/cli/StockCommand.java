package jackwork.cli;

import jackwork.stock.Fasteners;
import jackwork.stock.Frictions;
import jackwork.stock.Operations;
import jackwork.stock.PayNumbers;
import jackwork.stock.Rods;
import jackwork.stock.Sheets;
import jackwork.stock.Strays;
import jackwork.stock.Uncertain;
import java.util.Locale;
import picocli.CommandLine.Command;

/** {@code jackwork stock}. */
@Command(
        name = "stock",
        description = "Sheets, rods, fasteners, friction pairs and strays, with sources; work and money, as guessed.")
final class StockCommand extends Subcommand {

    @Override
    public Integer call() {
        System.out.println("Sheets (density g/cm³)");
        Sheets.catalogue().all().forEach(s -> row(s.name(), s.density()));
        System.out.println("Rods (density g/cm³)");
        Rods.catalogue().all().forEach(r -> row(r.name(), r.density()));
        System.out.println("Fasteners (mass g)");
        Fasteners.catalogue().all().forEach(f -> row(f.name(), f.mass()));
        System.out.println("Friction (coefficient, dry)");
        Frictions.catalogue().all().forEach(f -> row(f.a() + " on " + f.b(), f.coefficient()));
        System.out.println("What else people put into slots (diameter and thickness mm, mass g)");
        Strays.catalogue()
                .all()
                .forEach(s -> System.out.printf(
                        Locale.ROOT,
                        "  %-20s %7.2f %7.2f %7.2f  %s%n",
                        s.name(),
                        s.diameter(),
                        s.thickness(),
                        s.mass(),
                        s.source()));
        System.out.println("Work (minutes for one of it)");
        Operations.catalogue()
                .all()
                .forEach(o -> row(o.name(), o.minutes(), o.what() + (o.perBatch() ? ", once a batch" : "")));
        System.out.println("Money (by the path under `pay` in workshop.yaml; VAT in what is paid)");
        PayNumbers.catalogue()
                .all()
                .forEach(p -> row(p.name(), p.usual(), p.usual().unit() + ": " + p.what()));
        return Outcome.FINE;
    }

    private static void row(String name, Uncertain number) {
        row(name, number, number.source());
    }

    private static void row(String name, Uncertain number, String words) {
        System.out.printf(
                Locale.ROOT,
                "  %-20s %7.3f  (%.3f to %.3f)  %-13s %s%n",
                name,
                number.value(),
                number.low(),
                number.high(),
                number.basis().words(),
                words);
    }
}
