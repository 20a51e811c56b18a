package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/**
 * A shop buys the piece and puts its markup m on what it paid.
 *
 * @param makerVat that the maker charges the shop
 * @param reclaims whether the shop gets it back
 */
record Outright(String name, BigDecimal makerVat, boolean reclaims, BigDecimal markup, BigDecimal shopVat)
        implements Channel {

    static Outright of(Rates rates, String name) {
        String at = "channels.outright." + name + ".";
        return new Outright(
                name, rates.vat(), rates.yes(at + "reclaims"), rates.share(at + "markup"), rates.share(at + "vat"));
    }

    @Override
    public String kind() {
        return "outright";
    }

    @Override
    public boolean possible() {
        return true;
    }

    private BigDecimal lost() {
        return BigDecimal.ONE.add(reclaims ? BigDecimal.ZERO : makerVat);
    }

    private BigDecimal factor() {
        return lost().multiply(BigDecimal.ONE.add(markup)).multiply(BigDecimal.ONE.add(shopVat));
    }

    @Override
    public BigDecimal shelf(BigDecimal net) {
        return net.multiply(factor());
    }

    @Override
    public BigDecimal net(BigDecimal shelf) {
        return Money.divided(shelf, factor());
    }

    @Override
    public List<Rung> above(BigDecimal net) {
        BigDecimal paid = net.multiply(lost());
        BigDecimal sold = paid.multiply(BigDecimal.ONE.add(markup));
        return List.of(
                Rung.to("VAT that the shop cannot reclaim", net, paid),
                Rung.to("the shop's markup", paid, sold),
                Rung.to("the shop's VAT", sold, shelf(net)));
    }

    @Override
    public String formula() {
        return "shelf = W · (1 + " + (reclaims ? "0" : Money.plain(makerVat)) + ") · (1 + " + Money.plain(markup)
                + ") · (1 + " + Money.plain(shopVat) + "); the shop's margin is m / (1 + m) = "
                + Money.shown(Money.divided(markup, BigDecimal.ONE.add(markup)), 3);
    }
}
