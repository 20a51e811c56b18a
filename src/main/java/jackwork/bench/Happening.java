package jackwork.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What became of a piece.
 *
 * @param who buyer, borrower, place, who mended it; of a spare, the part
 * @param money paid for it; null when none was
 */
public record Happening(
        Stamp stamp,
        String serial,
        What what,
        String who,
        @Nullable Money money) implements Stamped {

    public Happening {
        Texts.require("serial", serial, 1, 40);
        Texts.require("who", who, what.names() ? 1 : 0, 200);
    }

    /** A move says where the piece is from then on. */
    public enum What {
        STOCK(true, false),
        SOLD(true, true),
        LENT(true, true),
        PLACED(true, true),
        RETURNED(true, false),
        SCRAPPED(true, false),
        REPAIRED(false, false),
        SPARE(false, true);

        private final boolean moves;
        private final boolean names;

        What(boolean moves, boolean names) {
            this.moves = moves;
            this.names = names;
        }

        public boolean moves() {
            return moves;
        }

        /** Whether somebody, some place or some part must be named. */
        boolean names() {
            return names;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static List<String> words() {
            return Arrays.stream(values()).map(What::word).toList();
        }

        /** @throws IllegalArgumentException when there is none of that word */
        public static What of(String word) {
            return Arrays.stream(values())
                    .filter(what -> what.word().equals(word))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "read \"" + word + "\", expected one of " + String.join(", ", words())));
        }
    }
}
