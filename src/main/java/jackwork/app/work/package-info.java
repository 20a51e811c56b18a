/**
 * Will it work: what is played, made by the hundred, and searched for.
 */
@NullMarked
package jackwork.app.work;

import org.jspecify.annotations.NullMarked;
