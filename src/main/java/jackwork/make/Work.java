package jackwork.make;

/**
 * Some of one operation.
 *
 * @param operation one of {@link jackwork.stock.Operations}
 * @param count how many: parts, dowels, sheets
 */
public record Work(String operation, double count) {}
