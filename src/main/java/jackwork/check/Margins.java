package jackwork.check;

/**
 * A margin where what it rests on is off to the bad side, and to the good side; in the finding's unit.
 *
 * @param low all that it rests on at the worse end
 * @param high all at the better end
 */
public record Margins(double low, double high) {}
