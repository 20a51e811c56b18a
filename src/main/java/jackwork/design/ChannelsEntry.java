package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Where pieces are sold, each under a name of the maker's own; one of each kind when none is named at all.
 *
 * @param outright shops that buy
 * @param commission galleries that keep a share
 * @param web by post
 * @param fair at a stall
 */
@About("Where pieces are sold, by kind, each under a name of your own.")
public record ChannelsEntry(
        Map<String, OutrightEntry> outright,
        Map<String, CommissionEntry> commission,
        Map<String, WebEntry> web,
        Map<String, FairEntry> fair) {

    /** Whether it names none. */
    public boolean none() {
        return outright.isEmpty() && commission.isEmpty() && web.isEmpty() && fair.isEmpty();
    }

    /** All names, in order, as often as they are used. */
    List<String> names() {
        List<String> names = new ArrayList<>(outright.keySet());
        names.addAll(commission.keySet());
        names.addAll(web.keySet());
        names.addAll(fair.keySet());
        return names;
    }
}
