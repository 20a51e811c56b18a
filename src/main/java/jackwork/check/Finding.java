package jackwork.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One question's answer.
 *
 * @param id stable name; per coin {@code coin-trips/EUR-1}
 * @param value what was found, null when it could not be computed
 * @param limit what it is held against
 * @param margin how far it is on the good side, positive passes
 * @param unit of the three
 * @param why one sentence
 * @param remedy one sentence; empty when nothing needs doing
 * @param formula with this design's numbers in it
 * @param restsOn what moves it, most first
 */
public record Finding(
        String id,
        String question,
        Status status,
        @Nullable Double value,
        @Nullable Double limit,
        @Nullable Double margin,
        String unit,
        Where where,
        String why,
        String remedy,
        String formula,
        List<Ground> restsOn) {

    Finding withRemedy(String other) {
        return new Finding(id, question, status, value, limit, margin, unit, where, why, other, formula, restsOn);
    }
}
