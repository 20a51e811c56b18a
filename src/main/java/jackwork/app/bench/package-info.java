/**
 * What happened at the bench: log, revisions, measured values, phones.
 */
@NullMarked
package jackwork.app.bench;

import org.jspecify.annotations.NullMarked;
