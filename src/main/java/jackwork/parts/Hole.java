package jackwork.parts;

import jackwork.geometry.Circle;
import org.jspecify.annotations.Nullable;

/**
 * A round hole for a rod, an eyelet or a cord.
 *
 * @param circle where and how large it must be once cut
 * @param joint the pin, slide, mount or other joint it serves
 * @param grips true when it holds the rod, false when it runs on it
 * @param bore what it is bored for; null for what no rod goes through
 */
public record Hole(
        Circle circle,
        String joint,
        boolean grips,
        @Nullable Bore bore) {

    /** For a cord or a screw, which are not fitted. */
    public static Hole open(Circle circle, String joint) {
        return new Hole(circle, joint, false, null);
    }
}
