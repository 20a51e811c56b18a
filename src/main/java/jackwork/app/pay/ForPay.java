package jackwork.app.pay;

import jackwork.app.wire.Payload;
import java.util.Map;

/**
 * Asks whether it will pay.
 *
 * @param version of the files, as the page has them
 * @param laidOut pieces on the sheets that are laid out together
 * @param quantity good pieces in a batch
 * @param shelf price asked on the shelf, as written; empty for the most that anybody pays
 * @param minutes of hands for a good piece; 0 for as long as they take
 * @param supposed with minutes as the workshop supposes them, though some were timed at the bench
 * @param numbers put otherwise, by their paths in workshop.yaml
 */
record ForPay(
        String version,
        int laidOut,
        int quantity,
        String shelf,
        double minutes,
        boolean supposed,
        Map<String, Double> numbers)
        implements Payload {}
