package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param stock a sheet of the workshop
 * @param layer counted from the back; parts of one layer share a plane
 * @param drawn id of its path when that is not the part's own name
 * @param printed name of the piece that it is printed with, as thick as its stock; parts of one body that name the same
 *     are printed in one; cut from the sheet when absent
 * @param paint colour of its finish, {@code "#rrggbb"}; bare wood when absent
 */
@About(
        "A flat part: an outline of the drawing, cut from a stock or printed as thick, in a layer counted from the back.")
public record PartEntry(
        String stock,
        int layer,
        @Nullable String drawn,
        @Nullable String printed,
        @Nullable String paint) {}
