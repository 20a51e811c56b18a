package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The maker sells at a ticket price, pays VAT v out of it, a share f of it to somebody, and a fixed amount for each piece:
 * ticket = (W + fixed) / (1 / (1 + v) − f). Galleries, the web and stalls differ only in what these are.
 *
 * @param fixed for each piece, by what it is for
 * @param taken name of the share
 */
record Ticket(String name, String kind, BigDecimal vat, BigDecimal share, String taken, List<Fixed> fixed)
        implements Channel {

    /** An amount for each piece. */
    record Fixed(String name, BigDecimal amount) {}

    static Ticket commission(Rates rates, String name) {
        BigDecimal share = rates.share("channels.commission." + name + ".share");
        return new Ticket(name, "commission", rates.vat(), share, "the gallery's commission", List.of());
    }

    static Ticket web(Rates rates, String name) {
        String at = "channels.web." + name + ".";
        return new Ticket(
                name,
                "web",
                rates.vat(),
                rates.share(at + "fee"),
                "fees by share",
                List.of(
                        new Fixed("fixed fee", rates.money(at + "fixed")),
                        new Fixed("real postage", rates.money(at + "postage"))));
    }

    static Ticket fair(Rates rates, String name) {
        String at = "channels.fair." + name + ".";
        BigDecimal each = Money.divided(FairDay.of(rates, name).cost(), rates.money(at + "pieces"));
        return new Ticket(
                name,
                "fair",
                rates.vat(),
                rates.share(at + "fee"),
                "card fees",
                List.of(new Fixed("its share of the day", each)));
    }

    private BigDecimal left() {
        return Money.divided(BigDecimal.ONE, BigDecimal.ONE.add(vat)).subtract(share);
    }

    private BigDecimal besides() {
        return fixed.stream().map(Fixed::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Override
    public boolean possible() {
        return left().signum() > 0;
    }

    @Override
    public BigDecimal shelf(BigDecimal net) {
        return Money.divided(net.add(besides()), left());
    }

    @Override
    public BigDecimal net(BigDecimal shelf) {
        return shelf.multiply(left()).subtract(besides());
    }

    @Override
    public List<Rung> above(BigDecimal net) {
        List<Rung> rungs = new ArrayList<>();
        BigDecimal reached = net;
        for (Fixed each : fixed) {
            BigDecimal next = reached.add(each.amount());
            rungs.add(Rung.to(each.name(), reached, next));
            reached = next;
        }
        BigDecimal shelf = shelf(net);
        BigDecimal withShare = reached.add(shelf.multiply(share));
        rungs.add(Rung.to(taken, reached, withShare));
        rungs.add(Rung.to("VAT", withShare, shelf));
        return rungs;
    }

    @Override
    public String formula() {
        return "shelf = (W + " + Money.shown(besides(), 2) + ") / (1 / (1 + " + Money.plain(vat) + ") − "
                + Money.plain(share) + ")";
    }
}
