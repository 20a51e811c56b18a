/**
 * The page's server: loopback only, one page, its data as JSON. Only this room knows Jetty. The
 * page's own sources stand in {@code web/} at the root. No computation here.
 */
@NullMarked
package jackwork.web;

import org.jspecify.annotations.NullMarked;
