package jackwork.price;

import jackwork.stock.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The cost of a good piece: set-up and test pieces / good pieces + Σ stage cost / (product of the yields from that stage
 * on) − salvage.
 */
public final class Costing {

    /** What an hour of hands rests on. */
    private static final List<String> HOUR = List.of("wage", "on-costs", "productive");

    private final Batch batch;
    private final Rates rates;
    private final int pieces;
    private final Yields yields;
    private final Prices prices;
    private final List<Task> tasks;
    private final List<CostLine> lines = new ArrayList<>();
    private final BigDecimal floor;
    private final BigDecimal hour;
    /** All that is paid for with VAT in it. */
    private BigDecimal bought = BigDecimal.ZERO;

    private @Nullable List<Channel> channels;

    private Costing(Batch batch, Rates rates, int pieces) {
        this.batch = batch;
        this.rates = rates;
        this.pieces = pieces;
        this.yields = Yields.of(rates);
        this.prices = new Prices(rates, batch);
        this.hour = rates.hourCost();
        this.tasks = new Times(rates, pieces).of(batch);
        stock();
        machines();
        hands();
        design();
        salvage();
        this.floor = lines.stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** @param pieces good ones wanted; stock and machines are those of one piece of the batch as laid out */
    public static Costing of(Batch batch, Rates rates, int pieces) {
        return new Costing(batch, rates, pieces);
    }

    Costing with(Rates other) {
        return new Costing(batch, other, pieces);
    }

    Costing with(Batch other) {
        return new Costing(other, rates, pieces);
    }

    Costing with(int otherPieces) {
        return new Costing(batch, rates, otherPieces);
    }

    private void stock() {
        BigDecimal testing = BigDecimal.ZERO;
        Set<String> tested = new LinkedHashSet<>();
        for (Item item : batch.items()) {
            BigDecimal each = prices.each(item);
            double into = yields.into(Stage.ofStock(item.kind()));
            BigDecimal paid = each.multiply(Money.of(prices.used(item) / batch.pieces() * into));
            paid("stock", item.item(), paid, prices.restsOn(item));
            if (item.testing() > 0) {
                testing = testing.add(Money.divided(each.multiply(Money.of(item.testing())), Money.of(pieces)));
                tested.addAll(prices.restsOn(item));
            }
        }
        paid("set-up", "test pieces", testing, List.copyOf(tested));
    }

    /** Paid with VAT in it, which is cost where the maker does not get it back. */
    private void paid(String group, String name, BigDecimal paid, List<String> restsOn) {
        bought = bought.add(paid);
        add(group, name, rates.cost(paid), restsOn);
    }

    private void add(String group, String name, BigDecimal amount, List<String> restsOn) {
        Basis weakest = restsOn.stream()
                .map(path -> rates.known(path).basis())
                .max(Comparator.naturalOrder())
                .orElse(Basis.MEASURED);
        lines.add(new CostLine(group, name, amount, weakest, restsOn));
    }

    private void machines() {
        double laser = batch.laserMinutes() * yields.into(Stage.CUT);
        paid("machines", "laser", Money.minutes(laser, machineHour("laser")), machineNumbers("laser"));
        double printer = Times.printerMinutes(batch, rates) * yields.into(Stage.PRINT);
        if (printer > 0) {
            List<String> restsOn = new ArrayList<>(machineNumbers("printer"));
            restsOn.add("printer.speed");
            paid("machines", "printer", Money.minutes(printer, machineHour("printer")), restsOn);
        }
    }

    private static List<String> machineNumbers(String machine) {
        return List.of(machine + ".price", machine + ".hours", machine + ".upkeep", machine + ".power", "energy");
    }

    /** Wear, upkeep and energy for an hour, as paid. */
    BigDecimal machineHour(String machine) {
        return Money.divided(rates.money(machine + ".price"), rates.money(machine + ".hours"))
                .add(rates.money(machine + ".upkeep"))
                .add(rates.money(machine + ".power").multiply(rates.money("energy")));
    }

    private void hands() {
        for (Stage stage : Stage.values()) {
            hands("hands", stage.word(), task -> task.stage() == stage && !task.perBatch());
        }
        hands("set-up", "hands", Task::perBatch);
        add(
                "overhead",
                "for the hours at work",
                Money.minutes(minutes(), rates.money("overhead")),
                List.of("overhead"));
    }

    private void hands(String group, String name, Predicate<Task> which) {
        List<Task> some = tasks.stream().filter(which).toList();
        double minutes = some.stream().mapToDouble(Task::minutes).sum();
        if (minutes > 0) {
            List<String> restsOn = new ArrayList<>(HOUR);
            some.stream()
                    .filter(task -> task.basis() != Basis.MEASURED)
                    .forEach(task -> restsOn.add("times." + task.operation()));
            add(group, name, Money.minutes(minutes, hour), restsOn);
        }
    }

    private void design() {
        List<String> restsOn = new ArrayList<>(HOUR);
        restsOn.addAll(List.of("design.hours", "design.pieces"));
        add("design", "its share of inventing", hour.multiply(designHours()), restsOn);
    }

    private BigDecimal designHours() {
        return Money.divided(rates.money("design.hours"), rates.money("design.pieces"));
    }

    private void salvage() {
        BigDecimal back = rates.money("yields.salvage").multiply(Money.of(yields.givenUp()));
        if (back.signum() > 0) {
            List<String> restsOn = List.of("yields.salvage", "yields.first-time", "yields.scrap");
            add("salvage", "from pieces given up", back.negate(), restsOn);
        }
    }

    /** Most minutes first. */
    public List<Task> tasks() {
        return tasks;
    }

    /** Of hands, for a good piece. */
    public double minutes() {
        return tasks.stream().mapToDouble(Task::minutes).sum();
    }

    List<CostLine> lines() {
        return lines;
    }

    /** Lowest price at which nothing is lost, before any VAT that the maker charges. */
    public BigDecimal floor() {
        return floor;
    }

    /** Where it can be sold, whatever that leaves. */
    List<Channel> channels() {
        List<Channel> known = channels;
        if (known == null) {
            known = Channels.of(rates);
            channels = known;
        }
        return known;
    }

    /** The channel of the same name among this costing's own. */
    Channel channel(Channel like) {
        return channels().stream()
                .filter(other ->
                        other.kind().equals(like.kind()) && other.name().equals(like.name()))
                .findFirst()
                .orElseThrow();
    }

    /** What each minute of hands adds: their hour and the overhead of it. */
    BigDecimal aMinute() {
        return Money.divided(hour.add(rates.money("overhead")), Money.HOUR);
    }

    /** All of it that does not grow with the minutes. */
    BigDecimal withoutMinutes() {
        return floor().subtract(aMinute().multiply(Money.of(minutes())));
    }

    /** How much the floor grows for each unit of wage: hours of hands and of inventing at the cost of a wage. */
    BigDecimal aWage() {
        BigDecimal hours = Money.divided(Money.of(minutes()), Money.HOUR).add(designHours());
        return rates.costOfWage().multiply(hours);
    }

    /** What goes out in money: the floor less what the maker's own hands would earn. */
    BigDecimal outlay() {
        return floor().subtract(aWage().multiply(rates.money("wage")));
    }

    /** Input VAT in it that the maker does not get back. */
    BigDecimal lostVat() {
        return rates.lostVat(bought);
    }

    Batch batch() {
        return batch;
    }

    Rates rates() {
        return rates;
    }

    Yields yields() {
        return yields;
    }

    int pieces() {
        return pieces;
    }

    Prices prices() {
        return prices;
    }
}
