/** The demo workshop: its pictures, drawn by a program so that anybody can draw them again, and the tests of its designs. */
@NullMarked
package jackwork.demo;

import org.jspecify.annotations.NullMarked;
