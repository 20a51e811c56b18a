package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the workshop says of its {@link Printer}. */
@About("What prints small parts, solid throughout; what is absent is guessed.")
public record PrinterEntry(
        @About("Width, depth and height that it can print.")
        @Quantity(unit = "mm", least = 10, most = 5000, usualFrom = 60, usualTo = 1000, why = "it stands in a workshop")
        List<Double> bed,

        @About("Of what it prints.")
        @Quantity(
                unit = "g/cm³",
                least = 0.3,
                most = 12,
                usualFrom = 0.8,
                usualTo = 4.5,
                usualSpread = 0.5,
                mostSpread = 1.2,
                why = "from foam to filled with metal")
        @Nullable
        Uncertain density,

        @About("How far a printed face comes out from where it was drawn.")
        @Quantity(
                unit = "mm",
                least = -1,
                most = 1,
                usualFrom = -0.4,
                usualTo = 0.4,
                why = "more is no printer but a glue gun")
        @Nullable
        Uncertain off) {}
