package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param file a PNG beside this file
 * @param at the picture's lower left corner
 * @param width of the whole picture, mm; its height follows
 * @param bleed how far it is printed beyond the part's edge, mm; 2 when absent
 */
@About("A picture printed in true size, to be glued on a part's face.")
public record PictureEntry(
        String file,
        Place at,
        @Unit("mm") double width,
        @Nullable @Unit("mm") Double bleed) {

    private static final double USUAL_BLEED = 2;

    /** mm. */
    public double bleedOrUsual() {
        return bleed == null ? USUAL_BLEED : bleed;
    }
}
