package jackwork.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A quicker way of making.
 *
 * @param words what is done otherwise
 * @param minutesSaved for a good piece
 * @param saved of a good piece's cost; negative where it costs more
 * @param capital to begin with
 * @param paysBack pieces after which it is paid for; null when never
 * @param findings whether the answers of the design's check could change: {@code stay}, or {@code run again}
 * @param edit what to put under {@code change} in design.yaml; empty where the drawings must change, or nothing
 * @param after verdict of the design so changed; null when it was not run
 * @param worse findings that came out worse by it
 */
public record Offer(
        String id,
        String name,
        String words,
        double minutesSaved,
        BigDecimal saved,
        BigDecimal capital,
        @Nullable BigDecimal paysBack,
        String findings,
        Map<String, String> edit,
        @Nullable String after,
        List<String> worse) {

    static final String STAY = "stay";
    static final String AGAIN = "run again";

    static Offer of(
            String id, String name, String words, Costing now, Costing then, BigDecimal capital, String findings) {
        BigDecimal saved = now.floor().subtract(then.floor());
        BigDecimal back = saved.signum() > 0 ? Money.divided(capital, saved).setScale(0, RoundingMode.CEILING) : null;
        return new Offer(
                id,
                name,
                words,
                now.minutes() - then.minutes(),
                saved,
                capital,
                back,
                findings,
                Map.of(),
                null,
                List.of());
    }

    Offer shown(int places) {
        return new Offer(
                id,
                name,
                words,
                minutesSaved,
                Money.shown(saved, places),
                Money.shown(capital, places),
                paysBack,
                findings,
                edit,
                after,
                worse);
    }
}
