package jackwork.price;

import jackwork.design.ChannelsEntry;
import jackwork.design.PathNumbers;
import jackwork.design.PayEntry;
import jackwork.design.WorkshopFile;
import jackwork.stock.Basis;
import jackwork.stock.Operation;
import jackwork.stock.Operations;
import jackwork.stock.PayNumber;
import jackwork.stock.PayNumbers;
import jackwork.stock.Uncertain;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import org.jspecify.annotations.Nullable;

/**
 * Every number that time and money depend on, by its path in workshop.yaml: the workshop's own, else a guess. Any of
 * them can be put to another value, so that one may ask what it moves.
 */
public final class Rates {

    /** Kinds of channel, and what one of each is called when the workshop names none. */
    static final List<String> KINDS = List.of("outright", "commission", "web", "fair");

    /** Of a number that no list of ours has: more is a slip of the pen. */
    private static final double MOST = 1e6;

    private static final Map<String, String> USUAL_NAMES =
            Map.of("outright", "shop", "commission", "gallery", "web", "post", "fair", "stall");

    private final Map<String, Uncertain> numbers;
    /** Paths of minutes that were timed at the bench. */
    private final Set<String> timed;

    private Rates(Map<String, Uncertain> numbers, Set<String> timed) {
        this.numbers = numbers;
        this.timed = timed;
    }

    public static Rates of(WorkshopFile workshop) {
        PayEntry pay = workshop.payOrNothing();
        Map<String, Uncertain> own = PathNumbers.of(pay);
        Map<String, Uncertain> numbers = new LinkedHashMap<>();
        for (Operation operation : Operations.catalogue().all()) {
            Uncertain minutes = workshop.times().getOrDefault(operation.name(), operation.minutes());
            numbers.put("times." + operation.name(), minutes);
        }
        for (PayNumber number : PayNumbers.catalogue().all()) {
            if (number.name().startsWith("channels.")) {
                String kind = number.name().split("\\.")[1];
                for (String channel : channels(pay.channels(), kind)) {
                    String path = number.name().replaceFirst(kind, kind + "." + Matcher.quoteReplacement(channel));
                    numbers.put(path, within(own.get(path), number));
                }
            } else {
                numbers.put(number.name(), within(own.get(number.name()), number));
            }
        }
        own.forEach(numbers::putIfAbsent);
        return new Rates(numbers, Set.of());
    }

    private static Collection<String> channels(@Nullable ChannelsEntry channels, String kind) {
        if (channels == null || channels.none()) {
            return List.of(USUAL_NAMES.getOrDefault(kind, kind));
        }
        return switch (kind) {
            case "outright" -> channels.outright().keySet();
            case "commission" -> channels.commission().keySet();
            case "web" -> channels.web().keySet();
            default -> channels.fair().keySet();
        };
    }

    /** The workshop's number with its interval cut at what it may be; ours when it has none. */
    private static Uncertain within(@Nullable Uncertain own, PayNumber number) {
        if (own == null) {
            return number.usual();
        }
        return new Uncertain(
                own.value(),
                Math.max(own.low(), number.least()),
                Math.min(own.high(), number.most()),
                number.usual().unit(),
                own.basis(),
                own.source());
    }

    /** Names of the channels of a kind. */
    List<String> channels(String kind) {
        List<String> names = new ArrayList<>();
        String before = "channels." + kind + ".";
        for (String path : numbers.keySet()) {
            if (path.startsWith(before)) {
                String name = path.substring(before.length(), path.lastIndexOf('.'));
                if (!names.contains(name)) {
                    names.add(name);
                }
            }
        }
        return names;
    }

    boolean has(String path) {
        return numbers.containsKey(path);
    }

    /** A number with its interval. */
    public Uncertain known(String path) {
        Uncertain number = numbers.get(path);
        if (number == null) {
            throw new IllegalStateException("no number \"" + path + "\" among the rates");
        }
        return number;
    }

    double number(String path) {
        return known(path).value();
    }

    BigDecimal money(String path) {
        return Money.of(number(path));
    }

    /** A percentage as a share of one. */
    BigDecimal share(String path) {
        return money(path).movePointLeft(2);
    }

    boolean yes(String path) {
        return number(path) != 0;
    }

    Map<String, Uncertain> all() {
        return numbers;
    }

    /** The same with one number known otherwise. */
    public Rates with(String path, Uncertain number) {
        known(path);
        Map<String, Uncertain> other = new LinkedHashMap<>(numbers);
        other.put(path, number);
        return new Rates(other, timed);
    }

    /** The same with one number put to a value. */
    public Rates with(String path, double value) {
        Uncertain now = known(path);
        return with(path, new Uncertain(value, value, value, now.unit(), now.basis(), now.source()));
    }

    /** The same with numbers that the maker gives for this question alone. */
    public Rates asked(Map<String, Double> given) {
        Rates rates = this;
        for (Map.Entry<String, Double> one : given.entrySet()) {
            String path = one.getKey();
            double value = one.getValue();
            String unit = known(path).unit();
            rates = rates.with(path, new Uncertain(value, value, value, unit, Basis.MEASURED, "as asked"));
        }
        return rates;
    }

    /** The same with minutes as timed at the bench, by operation. */
    Rates timed(Map<String, Uncertain> minutes) {
        Map<String, Uncertain> other = new LinkedHashMap<>(numbers);
        Set<String> paths = new HashSet<>(timed);
        minutes.forEach((operation, each) -> {
            String path = "times." + operation;
            other.put(path, each);
            paths.add(path);
        });
        return new Rates(other, paths);
    }

    /** Whether minutes were timed at the bench: what hands learn is in them. */
    boolean isTimed(String path) {
        return timed.contains(path);
    }

    /** Why a number cannot be put to a value, in words; null where it can. */
    public @Nullable String unfit(String path, double value) {
        if (!has(path)) {
            return "no number is called \"" + path + "\"";
        }
        PayNumber number = PayNumbers.catalogue().find(kind(path)).orElse(null);
        double least = number == null ? 0 : number.least();
        double most = number == null ? MOST : number.most();
        return value >= least && value <= most
                ? null
                : path + ": read " + plain(value) + ", expected " + plain(least) + " to " + plain(most);
    }

    private static String plain(double value) {
        return Double.isFinite(value) ? Money.of(value).stripTrailingZeros().toPlainString() : Double.toString(value);
    }

    /** A path without the name of the channel in it: what all channels of a kind have. */
    static String kind(String path) {
        return path.replaceFirst("^(channels\\.[a-z]+)\\..*\\.([a-z-]+)$", "$1.$2");
    }

    /** The same where every operation takes so many times as long; what was a guess remains one. */
    public Rates taking(double times) {
        Map<String, Uncertain> other = new LinkedHashMap<>(numbers);
        other.replaceAll((path, number) -> path.startsWith("times.")
                ? new Uncertain(
                        number.value() * times,
                        number.low() * times,
                        number.high() * times,
                        number.unit(),
                        number.basis(),
                        number.source())
                : number);
        return new Rates(other, timed);
    }

    /** VAT that the maker charges: none when not registered. */
    BigDecimal vat() {
        return yes("vat.registered") ? share("vat.rate") : BigDecimal.ZERO;
    }

    /** What something costs that was paid for with VAT in it: all of it, unless the maker gets the VAT back. */
    BigDecimal cost(BigDecimal paid) {
        return yes("vat.registered") ? Money.divided(paid, BigDecimal.ONE.add(share("vat.paid"))) : paid;
    }

    /** The VAT in it that the maker does not get back. */
    BigDecimal lostVat(BigDecimal paid) {
        return yes("vat.registered")
                ? BigDecimal.ZERO
                : paid.subtract(Money.divided(paid, BigDecimal.ONE.add(share("vat.paid"))));
    }

    /** wage · (1 + on-costs) / productive share. */
    BigDecimal hourCost() {
        return Money.divided(money("wage").multiply(BigDecimal.ONE.add(share("on-costs"))), share("productive"));
    }

    /** What an hour that goes into pieces costs, for each unit of wage. */
    BigDecimal costOfWage() {
        return Money.divided(BigDecimal.ONE.add(share("on-costs")), share("productive"));
    }
}
