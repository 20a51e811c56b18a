package jackwork.parts;

import jackwork.geometry.Circle;

/**
 * A round hole for a rod.
 *
 * @param circle where and how large it must be once cut
 * @param joint the pin, slide or mount it serves
 * @param grips true when it holds the rod, false when it runs on it
 */
public record Hole(Circle circle, String joint, boolean grips) {}
