package jackwork.price;

import java.util.ArrayList;
import java.util.List;

/** The workshop's channels. A new kind is one new file and one line here. */
final class Channels {

    private Channels() {}

    static List<Channel> of(Rates rates) {
        List<Channel> channels = new ArrayList<>();
        rates.channels("outright").forEach(name -> channels.add(Outright.of(rates, name)));
        rates.channels("commission").forEach(name -> channels.add(Ticket.commission(rates, name)));
        rates.channels("web").forEach(name -> channels.add(Ticket.web(rates, name)));
        rates.channels("fair").forEach(name -> channels.add(Ticket.fair(rates, name)));
        return channels;
    }
}
