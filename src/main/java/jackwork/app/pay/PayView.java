package jackwork.app.pay;

import jackwork.app.core.TimedWork;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.price.PriceReport;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Will it pay? as the page shows it; amounts as text, so that no digit of them is lost.
 *
 * @param version of the files that it was worked out from
 * @param laidOut pieces on the sheets that were laid out together
 * @param edits quicker ways of making that are edits of the design
 * @param timed work of the hands as the bench's log has it, whether it is asked for or not
 * @param drawn the builds behind the share of good pieces; null while that is a guess
 */
record PayView(
        String version,
        int laidOut,
        int edits,
        List<TimedWork> timed,
        @Nullable DrawnBuilds drawn,
        PriceReport report) implements Payload {

    /**
     * @param passes of these builds with every coin
     * @param beginners share that passes when beginners put it together
     */
    record DrawnBuilds(int builds, int passes, @Places(3) double beginners, String words) {}

    static PayView of(String version, int laidOut, Pricing pricing, List<TimedWork> timed, Pricing.Ask ask) {
        Pricing.Drawn drawn = pricing.drawn();
        DrawnBuilds builds = drawn == null
                ? null
                : new DrawnBuilds(
                        drawn.report().builds(),
                        drawn.report().passes(),
                        drawn.beginners(),
                        drawn.report().words());
        return new PayView(version, laidOut, pricing.edits(), timed, builds, pricing.answer(ask));
    }
}
