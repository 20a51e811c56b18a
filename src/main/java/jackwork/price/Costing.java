package jackwork.price;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cost of a good piece: set-up and test pieces / good pieces + Σ stage cost / (product of the yields from that stage
 * on) − salvage.
 */
public final class Costing {

    private final Batch batch;
    private final Rates rates;
    private final int pieces;
    private final Map<String, Double> measured;
    private final Yields yields;
    private final Prices prices;
    private final List<Task> tasks;
    private final List<CostLine> lines = new ArrayList<>();
    private BigDecimal lostVat = BigDecimal.ZERO;

    private Costing(Batch batch, Rates rates, int pieces, Map<String, Double> measured) {
        this.batch = batch;
        this.rates = rates;
        this.pieces = pieces;
        this.measured = measured;
        this.yields = Yields.of(rates);
        this.prices = new Prices(rates, batch);
        this.tasks = new Times(rates, measured, pieces).of(batch);
        stock();
        machines();
        hands();
        design();
        salvage();
    }

    /**
     * @param pieces good ones wanted; stock and machines are those of one piece of the batch as laid out
     * @param measured minutes by operation or stage, from the bench
     */
    public static Costing of(Batch batch, Rates rates, int pieces, Map<String, Double> measured) {
        return new Costing(batch, rates, pieces, measured);
    }

    Costing with(Rates other) {
        return new Costing(batch, other, pieces, measured);
    }

    Costing with(Batch other) {
        return new Costing(other, rates, pieces, measured);
    }

    Costing with(int otherPieces) {
        return new Costing(batch, rates, otherPieces, measured);
    }

    private void stock() {
        BigDecimal testing = BigDecimal.ZERO;
        for (Item item : batch.items()) {
            BigDecimal each = prices.each(item);
            double into = yields.into(Stage.ofStock(item.kind()));
            BigDecimal paid = each.multiply(Money.of(prices.used(item) / batch.pieces() * into));
            add("stock", item.item(), paid);
            testing = testing.add(Money.divided(each.multiply(Money.of(item.testing())), Money.of(pieces)));
        }
        add("set-up", "test pieces", testing);
    }

    /** Paid with VAT in it, which is cost where the maker does not get it back. */
    private void add(String group, String name, BigDecimal paid) {
        lostVat = lostVat.add(rates.lostVat(paid));
        lines.add(new CostLine(group, name, rates.cost(paid)));
    }

    private void machines() {
        double laser = batch.laserMinutes() * yields.into(Stage.CUT);
        add("machines", "laser", Money.minutes(laser, machineHour("laser")));
        double printer = Times.printerMinutes(batch, rates) * yields.into(Stage.PRINT);
        if (printer > 0) {
            add("machines", "printer", Money.minutes(printer, machineHour("printer")));
        }
    }

    /** Wear, upkeep and energy for an hour, as paid. */
    BigDecimal machineHour(String machine) {
        return Money.divided(rates.money(machine + ".price"), rates.money(machine + ".hours"))
                .add(rates.money(machine + ".upkeep"))
                .add(rates.money(machine + ".power").multiply(rates.money("energy")));
    }

    private void hands() {
        BigDecimal hour = rates.hourCost();
        for (Stage stage : Stage.values()) {
            double minutes = tasks.stream()
                    .filter(task -> task.stage() == stage && !task.perBatch())
                    .mapToDouble(Task::minutes)
                    .sum();
            if (minutes > 0) {
                lines.add(new CostLine("hands", stage.word(), Money.minutes(minutes, hour)));
            }
        }
        double setUp =
                tasks.stream().filter(Task::perBatch).mapToDouble(Task::minutes).sum();
        lines.add(new CostLine("set-up", "hands", Money.minutes(setUp, hour)));
        lines.add(new CostLine("overhead", "for the hours at work", Money.minutes(minutes(), rates.money("overhead"))));
    }

    private void design() {
        lines.add(new CostLine(
                "design", "its share of inventing", rates.hourCost().multiply(designHours())));
    }

    private BigDecimal designHours() {
        return Money.divided(rates.money("design.hours"), rates.money("design.pieces"));
    }

    private void salvage() {
        BigDecimal back = rates.money("yields.salvage").multiply(Money.of(yields.givenUp()));
        if (back.signum() > 0) {
            lines.add(new CostLine("salvage", "from pieces given up", back.negate()));
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
        return lines.stream().map(CostLine::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What each minute of hands adds: their hour and the overhead of it. */
    BigDecimal aMinute() {
        return Money.divided(rates.hourCost().add(rates.money("overhead")), Money.HOUR);
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
        return lostVat;
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
