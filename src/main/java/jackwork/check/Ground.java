package jackwork.check;

import jackwork.stock.Uncertain;

/**
 * A number that a finding rests on.
 *
 * @param drop how much of the margin its worse end takes away, in the finding's unit
 */
public record Ground(String name, Uncertain number, double drop) {}
