package jackwork.check;

import jackwork.stock.Uncertain;

/**
 * A number that a finding rests on.
 *
 * @param drop how much of the margin its worse end takes away, in the finding's unit
 * @param gain how much its better end adds
 */
public record Ground(String name, Uncertain number, double drop, double gain) {}
