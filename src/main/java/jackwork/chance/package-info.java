/**
 * What counts say of a rate: its interval, how many tries prove it, how strange the gap between two of them is. Imports
 * nothing of Jackwork. Sources: Clopper and Pearson, Biometrika 26 (1934); Fisher, Statistical Methods for Research
 * Workers (1934), section 21.02; the success run, from memory.
 */
@NullMarked
package jackwork.chance;

import org.jspecify.annotations.NullMarked;
