/**
 * The command line: parses arguments, prints, turns outcomes into exit codes. Results go to stdout,
 * talk to stderr; exit 0 fine, 1 the design fails, 2 bad input or usage, 3 our own fault. Only this
 * room knows picocli. No computation here.
 */
@NullMarked
package jackwork.cli;

import org.jspecify.annotations.NullMarked;
