/**
 * Laying irregular pieces on strips and sheets: closely, turned as they may be, small ones in the holes of large ones. Knows
 * nothing of wood. Lengths in mm, angles in radians inside and degrees outside. Imports {@code geometry} alone.
 *
 * <p>The search lets pieces overlap and drives the overlap out, pair by pair with weights that grow while a pair resists:
 * guided local search for nesting after Egeblad, Nielsen and Odgaard, EJOR 183 (2007) 1249–1266, and overlap minimisation
 * after Imamichi, Yagiura and Nagamochi, Discrete Optimization 6 (2009) 345–361; how deep two pieces overlap is judged by
 * circles inscribed in them. Most places tried lay a corner on a corner and an edge along an edge: exact fits are found so.
 */
@NullMarked
package jackwork.layout;

import org.jspecify.annotations.NullMarked;
