package jackwork.make;

import jackwork.geometry.Point;
import jackwork.layout.LayoutResult;
import jackwork.layout.Piece;
import java.nio.DoubleBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;

/**
 * The same pieces on the same sheet, searched for by as many moves, lie the same: a sheet that an edit left alone is not laid
 * out again. Only searches of a fixed number of moves, which chance and the clock have no part in, and none that was stopped.
 */
final class LaidBefore {

    /** Some designs of some stocks each, tightly and roughly: a hundred kilobytes each, with the outlines it is known by. */
    private static final int KEPT = 64;

    private static final Map<DoubleBuffer, LayoutResult> RESULTS = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<DoubleBuffer, LayoutResult> eldest) {
            return size() > KEPT;
        }
    };

    private LaidBefore() {}

    /** As it was laid, else as {@code laying} lays it now. */
    static LayoutResult or(
            List<Piece> pieces,
            double length,
            double width,
            SheetSearch search,
            int share,
            Supplier<LayoutResult> laying) {
        if (search.seconds() > 0) {
            return laying.get();
        }
        DoubleBuffer key = key(pieces, length, width, search.moves() / share);
        synchronized (RESULTS) {
            LayoutResult known = RESULTS.get(key);
            if (known != null) {
                return known;
            }
        }
        LayoutResult laid = laying.get();
        if (!search.stopped().getAsBoolean()) {
            synchronized (RESULTS) {
                RESULTS.put(key, laid);
            }
        }
        return laid;
    }

    /** Every number that the search sees: compared by what is in it. */
    private static DoubleBuffer key(List<Piece> pieces, double length, double width, long moves) {
        DoubleStream.Builder key = DoubleStream.builder();
        key.add(length).add(width).add((double) moves);
        Piece before = null;
        for (Piece piece : pieces) {
            // Copies of a piece are one and the same to the search: they count, and are not written again.
            boolean again = piece.equals(before);
            key.add(again ? 1 : 0);
            if (!again) {
                key.add(piece.turns().size());
                piece.turns().forEach(key::add);
                key.add(piece.outline().holes().size());
                ring(key, piece.outline().outer());
                piece.outline().holes().forEach(hole -> ring(key, hole));
            }
            before = piece;
        }
        return DoubleBuffer.wrap(key.build().toArray());
    }

    private static void ring(DoubleStream.Builder key, List<Point> ring) {
        key.add(ring.size());
        ring.forEach(point -> key.add(point.x()).add(point.y()));
    }
}
