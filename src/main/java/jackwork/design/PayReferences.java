package jackwork.design;

import jackwork.stock.PayNumber;
import jackwork.stock.PayNumbers;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Holds a workshop's minutes and money against what they may be. */
final class PayReferences {

    private PayReferences() {}

    static void check(WorkshopFile workshop, YamlFile file) {
        PayEntry pay = workshop.pay();
        if (pay == null) {
            return;
        }
        for (Map.Entry<String, Uncertain> number : PathNumbers.of(pay).entrySet()) {
            known(number.getKey())
                    .ifPresent(known ->
                            within("pay." + number.getKey(), number.getValue(), known.least(), known.most(), file));
        }
        pay.prices().forEach((item, price) -> {
            String path = "pay.prices." + item;
            within(path + ".price", price.price(), 0, 1e6, file);
            Uncertain holds = price.holds();
            if (holds != null) {
                within(path + ".holds", holds, 0.001, 1e9, file);
            }
        });
        for (int i = 0; i < pay.bands().size(); i++) {
            double to = pay.bands().get(i).to();
            double before = i == 0 ? 0 : pay.bands().get(i - 1).to();
            if (!(to > before)) {
                file.problem("pay.bands." + i + ".to", "read " + to + ", expected more than " + before);
            }
        }
        leaveSomething(pay, file);
    }

    /** Shares taken off the ticket and VAT may not take all of it. */
    private static void leaveSomething(PayEntry pay, YamlFile file) {
        ChannelsEntry channels = pay.channels();
        if (channels != null) {
            List<String> names = channels.names();
            names.stream()
                    .filter(name -> names.indexOf(name) != names.lastIndexOf(name))
                    .distinct()
                    .forEach(name -> file.problem(
                            "pay.channels",
                            "read the channel \"" + name + "\" in two kinds; give each a name of its own"));
            channels.commission()
                    .forEach((name, entry) -> lessThanAll(pay, entry.share(), "commission." + name + ".share", file));
            channels.web().forEach((name, entry) -> lessThanAll(pay, entry.fee(), "web." + name + ".fee", file));
            channels.fair().forEach((name, entry) -> lessThanAll(pay, entry.fee(), "fair." + name + ".fee", file));
        }
    }

    private static void lessThanAll(PayEntry pay, @Nullable Uncertain share, String path, YamlFile file) {
        VatEntry vat = pay.vat();
        Uncertain written = vat == null ? null : vat.rate();
        double rate = written == null ? usual("vat.rate") : written.value();
        boolean charged = vat != null && Boolean.TRUE.equals(vat.registered());
        double left = charged ? 100 / (1 + rate / 100) : 100;
        if (share != null && share.value() >= left) {
            file.problem(
                    "pay.channels." + path,
                    "read " + plain(share.value())
                            + " %, which with VAT leaves nothing of the price; expected less than "
                            + plain(Math.floor(left)));
        }
    }

    private static double usual(String name) {
        return PayNumbers.catalogue()
                .find(name)
                .map(number -> number.usual().value())
                .orElse(0.0);
    }

    /** The number that a path names; the maker's own names of channels are not part of it. */
    private static Optional<PayNumber> known(String path) {
        return PayNumbers.catalogue().find(path.replaceFirst("^(channels\\.[a-z]+)\\..*\\.([a-z-]+)$", "$1.$2"));
    }

    /** Its interval is cut at what it may be, not refused: a bare number's is only a guess. */
    private static void within(String path, Uncertain number, double least, double most, YamlFile file) {
        if (number.value() < least || number.value() > most) {
            file.problem(path, "read " + plain(number.value()) + ", expected " + plain(least) + " to " + plain(most));
        }
    }

    private static String plain(double value) {
        return new BigDecimal(String.valueOf(value)).stripTrailingZeros().toPlainString();
    }
}
