package jackwork.price;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that a price is asked of.
 *
 * @param pieces good ones in a batch
 * @param unused timings whose names are no operation
 * @param asked price on a shelf; what the dearest of the bands takes when absent
 * @param edits alternatives that are edits of the design
 */
public record PriceQuestion(
        String design,
        String currency,
        Batch batch,
        Rates rates,
        int pieces,
        List<String> unused,
        @Nullable BigDecimal asked,
        Bands bands,
        WayFacts facts,
        List<Edited> edits) {}
