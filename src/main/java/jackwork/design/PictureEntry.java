package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("A picture printed in true size, to be glued on a part's face.")
public record PictureEntry(
        @About("A PNG beside this file.") @Text String file,

        @About("The picture's lower left corner.") Place at,

        @About("Of the whole picture; its height follows.")
        @Quantity(unit = "mm", least = 1, most = 5000, usualTo = 1000, why = "it is printed on paper")
        double width,

        @About("How far it is printed beyond the part's edge; 2 when left out.")
        @Quantity(unit = "mm", least = 0, most = 20, usualTo = 10, why = "it is trimmed off")
        @Nullable
        Double bleed)
        implements Entry {

    private static final double USUAL_BLEED = 2;

    /** mm. */
    public double bleedOrUsual() {
        return bleed == null ? USUAL_BLEED : bleed;
    }
}
