package jackwork.design;

import jackwork.stock.Uncertain;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the workshop says of its {@link Printer}. */
@About("What prints small parts, solid throughout; what is absent is guessed.")
public record PrinterEntry(
        @About("Width, depth and height that it can print.") @Unit("mm")
        List<Double> bed,

        @About("Of what it prints.") @Unit("g/cm³") @Nullable
        Uncertain density,

        @About("How far a printed face comes out from where it was drawn.") @Unit("mm") @Nullable
        Uncertain off) {}
