/**
 * Will it pay: prices, what moves them, quicker ways.
 */
@NullMarked
package jackwork.app.pay;

import org.jspecify.annotations.NullMarked;
