package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.stock.Operations;
import java.util.List;

/** How long work at the bench takes, minutes: as the workshop has it, else guesses by common practice. */
final class Minutes {

    private final WorkshopFile workshop;

    Minutes(WorkshopFile workshop) {
        this.workshop = workshop;
    }

    double of(List<Work> works) {
        return works.stream().mapToDouble(this::of).sum();
    }

    private double of(Work work) {
        var own = workshop.times().get(work.operation());
        double each = own != null
                ? own.value()
                : Operations.catalogue()
                        .find(work.operation())
                        .orElseThrow(() -> new IllegalStateException("no operation " + work.operation()))
                        .minutes()
                        .value();
        return work.count() * each;
    }
}
