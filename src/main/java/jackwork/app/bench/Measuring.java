package jackwork.app.bench;

import jackwork.app.core.Trials;
import jackwork.app.history.Turn;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.StaleException;
import jackwork.bench.Forms;
import jackwork.bench.Kinds;
import jackwork.bench.Measured;
import jackwork.bench.Stamp;
import jackwork.design.DesignFiles;
import jackwork.design.WorkshopReader;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Measurements on the page: looked at before they are kept, then put to use. */
final class Measuring {

    private final Bench bench;
    private final DeskLog entries;
    private final Trials trials;

    Measuring(Bench bench, DeskLog entries, Trials trials) {
        this.bench = bench;
        this.entries = entries;
        this.trials = trials;
    }

    /** What a measurement comes to; nothing is logged. */
    MeasuredTry look(ForMeasured request) {
        Measured read;
        if (request.fields().containsValue(null)) {
            throw new BadRequestException("read null, expected fields that are texts");
        }
        try {
            read = entries.measured(Stamp.of(Instant.now(), ""), request.kind(), request.fields());
        } catch (IllegalArgumentException e) {
            throw new BadRequestException(String.valueOf(e.getMessage()));
        }
        List<Measured> same = new ArrayList<>(bench.log().counting(Kinds.MEASURED).stream()
                .filter(other ->
                        other.kind().equals(read.kind()) && other.about().equals(read.about()))
                .toList());
        same.add(read);
        String why = "";
        BenchView.ValueView alone = null;
        try {
            alone = BenchViewMaker.value(Forms.of(List.of(read)));
        } catch (IllegalArgumentException e) {
            why = String.valueOf(e.getMessage());
        }
        return new MeasuredTry(Forms.place(read.kind(), read.about()), alone, why, together(same), same.size());
    }

    private static BenchView.@Nullable ValueView together(List<Measured> same) {
        try {
            Uncertain value = Forms.of(same);
            return BenchViewMaker.value(value);
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    /** What would change in workshop.yaml. */
    UseView use(List<String> wanted, List<String> designs) {
        UseMeasured use = of(wanted);
        return new UseView(
                DesignFiles.nameOf(use.after()),
                use.values().entrySet().stream()
                        .map(value -> new UseView.UsedValue(value.getKey(), BenchViewMaker.value(value.getValue())))
                        .toList(),
                use.skipped().entrySet().stream()
                        .map(skipped -> new UseView.SkippedValue(skipped.getKey(), skipped.getValue()))
                        .toList(),
                use.changes().stream()
                        .map(change -> new UseView.ChangedValue(
                                change.path(),
                                Objects.requireNonNullElse(change.before(), ""),
                                Objects.requireNonNullElse(change.after(), "")))
                        .toList(),
                use.before().equals(use.after()) ? List.of() : designs);
    }

    private UseMeasured of(List<String> wanted) {
        return UseMeasured.of(bench.workshop(), bench.log(), wanted, Instant.MIN);
    }

    /** What that does to one design. */
    UseEffect on(List<String> wanted, String design) {
        UseMeasured.Effect effect = of(wanted).on(bench.workshop(), design);
        return new UseEffect(design, effect.then(), effect.now(), MovedFinding.of(effect.moved()), effect.trouble());
    }

    /**
     * Writes it.
     *
     * @throws StaleException when it would be another text than was looked at
     * @throws jackwork.design.DesignException when a design could not be shown any more; nothing is written then
     */
    void apply(ForUse request) {
        UseMeasured use = of(request.wanted());
        if (!DesignFiles.nameOf(use.after()).equals(request.text())) {
            throw new StaleException("workshop.yaml or the log was changed meanwhile; nothing was written.");
        }
        Trials.Tried designs = trials.others(
                "",
                Map.of(
                        bench.workshop()
                                .resolve(WorkshopReader.FILE)
                                .toAbsolutePath()
                                .normalize(),
                        use.after()));
        try {
            Turn.take(bench.workshop(), () -> {
                designs.requireFresh();
                use.write(bench.workshop());
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
