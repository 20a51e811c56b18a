package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.List;

/**
 * Whether a phone can log.
 *
 * @param at where it is served; empty while it is not
 * @param link that lets one phone in; empty once it was used or is too old
 * @param addresses of this machine, at which a phone could reach it
 */
record PhoneView(boolean on, String at, String link, List<PhoneGuest> guests, List<String> addresses)
        implements Payload {

    /** A phone that is in; both times are UTC, ISO 8601. */
    record PhoneGuest(String since, String until) {}
}
