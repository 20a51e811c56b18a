package jackwork.bench;

import java.time.Instant;
import java.util.List;

/**
 * Where a piece is.
 *
 * @param what the last move; in stock when there was none
 * @param who buyer, borrower, place
 * @param since when
 */
public record Whereabouts(Happening.What what, String who, Instant since) {

    /** @param happenings of this piece, oldest first */
    public static Whereabouts of(Piece piece, List<Happening> happenings) {
        return happenings.stream()
                .filter(happening -> happening.what().moves())
                .reduce((first, second) -> second)
                .map(last -> new Whereabouts(
                        last.what() == Happening.What.RETURNED ? Happening.What.STOCK : last.what(),
                        last.what() == Happening.What.RETURNED ? "" : last.who(),
                        last.stamp().at()))
                .orElseGet(() ->
                        new Whereabouts(Happening.What.STOCK, "", piece.stamp().at()));
    }
}
