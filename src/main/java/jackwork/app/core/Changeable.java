package jackwork.app.core;

import jackwork.app.wire.Pair;
import jackwork.design.Adjustable;
import jackwork.design.Field;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What of a design can be changed at the page.
 *
 * @param entries of the two files' sections
 * @param outlines closed outlines of the figure's drawing that are no part yet
 * @param sharedWith other designs on the same figure file
 */
record Changeable(
        List<Setting> settings,
        List<Spot> spots,
        List<Stop> stops,
        List<Entry> entries,
        List<String> outlines,
        Choices choices,
        List<String> sharedWith) {

    Changeable sharedWith(List<String> others) {
        return new Changeable(settings, spots, stops, entries, outlines, choices, others);
    }

    /**
     * A number.
     *
     * @param about one sentence; empty when the path says it all
     * @param whole whether only whole ones go
     * @param least lower is refused; null where nothing is
     * @param most higher is refused; null where nothing is
     * @param why what the bounds rest on
     */
    record Setting(
            String path,
            double value,
            String about,
            String unit,
            boolean whole,
            @Nullable Double least,
            @Nullable Double most,
            String why) {

        static Setting of(Adjustable.Setting number) {
            Field field = number.field();
            return new Setting(
                    number.path(),
                    number.value(),
                    field.about(),
                    field.unit(),
                    field.whole(),
                    Double.isInfinite(field.least()) ? null : field.least(),
                    Double.isInfinite(field.most()) ? null : field.most(),
                    field.why());
        }
    }

    /** A point, with every place that stands on it. */
    record Spot(List<String> paths, Pair at) {}

    /**
     * A limit to how far a part turns.
     *
     * @param part that is limited
     * @param pin that it turns about
     * @param from least turning from as drawn, degrees
     * @param to greatest
     */
    record Stop(String path, String part, Pair pin, double from, double to) {}

    /** @param about the parts it joins or stands on */
    record Entry(String path, String section, String name, String about) {}

    record Choices(List<String> sheets, List<String> rods, List<String> cords, List<String> fasteners) {}
}
