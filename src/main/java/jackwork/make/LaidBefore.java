package jackwork.make;

import jackwork.geometry.Point;
import jackwork.layout.LayoutResult;
import jackwork.layout.Piece;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The same pieces on the same sheet, searched for by as many moves, lie the same: a sheet that an edit left alone is not laid
 * out again. Only searches of a fixed number of moves, which chance and the clock have no part in, and none that was stopped.
 */
final class LaidBefore {

    /** Some designs of some stocks each, tightly and roughly; a result is a few kilobytes. */
    private static final int KEPT = 256;

    private static final Map<String, LayoutResult> RESULTS = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, LayoutResult> eldest) {
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
        String key = key(pieces, length, width, search.moves() / share);
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

    /** Of every number that the search sees. */
    private static String key(List<Piece> pieces, double length, double width, long moves) {
        MessageDigest digest = sha256();
        add(digest, length, width, (double) moves, pieces.size());
        @Nullable Piece before = null;
        for (Piece piece : pieces) {
            // Copies of a piece are one and the same to the search: they count, and are not read again.
            boolean again = piece.equals(before);
            add(digest, again ? 1 : 0);
            if (!again) {
                add(digest, piece.turns().size());
                piece.turns().forEach(turn -> add(digest, turn));
                add(digest, piece.outline().holes().size());
                ring(digest, piece.outline().outer());
                piece.outline().holes().forEach(hole -> ring(digest, hole));
            }
            before = piece;
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void ring(MessageDigest digest, List<Point> ring) {
        add(digest, ring.size());
        ring.forEach(point -> add(digest, point.x(), point.y()));
    }

    private static void add(MessageDigest digest, double... numbers) {
        ByteBuffer bytes = ByteBuffer.allocate(8 * numbers.length);
        for (double number : numbers) {
            bytes.putDouble(number);
        }
        digest.update(bytes.array());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
