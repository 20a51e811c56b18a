package jackwork.price;

/**
 * A line of the bill.
 *
 * @param kind what it is priced as when it has no price of its own
 * @param amount for the batch; whole sheets
 * @param testing used up by test pieces, once
 * @param unit of both
 */
public record Item(String item, String kind, double amount, double testing, String unit) {}
