/**
 * What really happened: the log of revisions, trials, timings, measurements, pieces and takings, in the workshop's
 * {@code workshop.db}; and how readings become a workshop's values, with their spread. The tables are described in
 * {@code docs/bench-log.md}.
 *
 * <p>Units: mm, g, N, degrees, minutes; money in decimals. Times are UTC, in whole seconds. May import {@code check} and
 * below, no sibling; only this room knows SQLite. Source: RFC 4180 for the CSV files.
 */
@NullMarked
package jackwork.bench;

import org.jspecify.annotations.NullMarked;
