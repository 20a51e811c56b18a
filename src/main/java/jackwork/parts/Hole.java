package jackwork.parts;

import jackwork.geometry.Circle;

/**
 * A round hole for a rod, an eyelet or a cord.
 *
 * @param circle where and how large it must be once cut
 * @param joint the pin, slide, mount or other joint it serves
 * @param grips true when it holds the rod, false when it runs on it
 */
public record Hole(Circle circle, String joint, boolean grips) {}
