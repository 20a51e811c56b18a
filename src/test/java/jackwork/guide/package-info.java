/**
 * The guide, docs/guide, walked as it is read: from the top of its first page to the end of its last, each picture is made
 * and each command run where it stands, in one workshop, with the real program, server and browser.
 */
@NullMarked
package jackwork.guide;

import org.jspecify.annotations.NullMarked;
