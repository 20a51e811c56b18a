/**
 * Questions asked of a piece, its motion, coin works, case, rods and pictures, and what an answer is.
 *
 * <p>One class a question, all in one list, {@link jackwork.check.Questions}. A {@link
 * jackwork.check.Finding} is a value: a complaint about a design is never an exception. Shown units:
 * mm, N, N·mm, degrees. May import {@code motion} and below.
 */
@NullMarked
package jackwork.check;

import org.jspecify.annotations.NullMarked;
