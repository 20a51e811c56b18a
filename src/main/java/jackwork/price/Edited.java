package jackwork.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An alternative that is a real edit of the design: what it takes was taken from the design so edited.
 *
 * @param as a batch of the design as it is, its sheets counted as those of the edited one
 * @param batch of the edited design
 * @param hours the rate that says how long it takes to try: {@code sleeve-hours}
 * @param edit for {@code change} in design.yaml
 * @param after its verdict; null when its findings were not run again
 * @param worse findings that came out worse
 */
public record Edited(
        String id,
        String name,
        String words,
        Batch as,
        Batch batch,
        String hours,
        Map<String, String> edit,
        @Nullable String after,
        List<String> worse) {

    /** The same once its findings were run again. */
    public Edited asked(String verdict, List<String> worseThan) {
        return new Edited(id, name, words, as, batch, hours, edit, verdict, worseThan);
    }

    Offer offer(Costing costing) {
        Offer offer = Offer.of(
                id,
                name,
                words,
                costing.with(as),
                costing.with(batch),
                Quicker.capital(costing.rates(), hours, BigDecimal.ZERO),
                Offer.AGAIN);
        return new Offer(
                id,
                name,
                words,
                offer.minutesSaved(),
                offer.saved(),
                offer.capital(),
                offer.paysBack(),
                after == null ? Offer.AGAIN : "were run again",
                edit,
                after,
                worse);
    }
}
