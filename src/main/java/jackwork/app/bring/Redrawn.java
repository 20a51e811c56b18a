package jackwork.app.bring;

import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A design's drawing that was drawn again, held against what it was; mm, in the old drawing's frame.
 *
 * @param version of the files that it was held against
 * @param added outlines of the new drawing that are no part yet
 * @param sharing names of other designs with the same figure: they change as well
 */
record Redrawn(
        String version,
        double scale,
        List<RedrawnPart> parts,
        List<RedrawnPoint> points,
        List<RedrawnShape> added,
        List<String> sharing)
        implements Payload {

    enum Change {
        SAME,
        MOVED,
        TURNED,
        RESHAPED,
        GONE
    }

    /**
     * @param key of the new outline; empty when there is none
     * @param words what happened to it
     */
    record RedrawnPart(
            String name,
            Change change,
            String key,
            String words,
            List<List<Pair>> was,
            @Nullable List<List<Pair>> now) {}

    record RedrawnPoint(String name, Change change, String key, String words, Pair was, Pair now) {}

    record RedrawnShape(String key, List<List<Pair>> rings) {}

    /**
     * What the maker makes of it.
     *
     * @param base version of the files that was shown
     * @param text of the new drawing
     * @param parts key of the new outline by part; empty: it stays as it was
     * @param points key of the new circle by point, likewise
     * @param dropped parts to take out, with what cannot be without them
     */
    record Redraw(
            String base,
            String file,
            String text,
            double scale,
            Map<String, String> parts,
            Map<String, String> points,
            List<AddedPart> added,
            List<String> dropped)
            implements Payload {}

    /** @param on the part that it is glued to */
    record AddedPart(String key, String name, String stock, int layer, String on) {}
}
