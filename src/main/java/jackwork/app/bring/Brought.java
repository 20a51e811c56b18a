package jackwork.app.bring;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a drawing or a picture offers: outlines for parts, circles for pivots and holes; mm at the size asked for, y up.
 * Keys stay the same when the same file is read at another size.
 *
 * @param picture whether it came from a picture
 * @param sized whether the file says its true size; else it must be asked for
 */
record Brought(
        String file,
        boolean picture,
        boolean sized,
        double scale,
        double width,
        double height,
        List<BroughtShape> shapes,
        List<BroughtRound> rounds,
        List<BroughtLine> lines,
        List<BroughtFlaw> flaws)
        implements Payload {

    /**
     * @param id of the file; empty when it has none
     * @param layer a guess, from what is painted over what, counted from the back
     * @param twins how many times more it was drawn: its line and its fill
     */
    record BroughtShape(
            String key,
            String id,
            List<List<Pair>> rings,
            @Places(2) double area,
            @Places(3) double width,
            @Places(3) double height,
            int layer,
            @Nullable String paint,
            int twins) {}

    /** @param inside keys of the outlines that it lies in, back to front */
    record BroughtRound(
            String key, String id, Pair at, @Places(4) double radius, List<String> inside) {}

    /** @param on key of the outline that it lies on, the frontmost; null when it lies on none */
    record BroughtLine(
            String key, List<Pair> points, @Nullable String on) {}

    record BroughtFlaw(String key, Pair at, String words) {}
}
