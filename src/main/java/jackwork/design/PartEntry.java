package jackwork.design;

import org.jspecify.annotations.Nullable;

/**
 * @param stock a sheet of the workshop
 * @param layer counted from the back; parts of one layer share a plane
 * @param drawn id of its path when that is not the part's own name
 * @param paint colour of its finish, {@code "#rrggbb"}; bare wood when absent
 */
@About("A flat part: an outline of the drawing, cut from a stock, in a layer counted from the back.")
public record PartEntry(
        String stock,
        int layer,
        @Nullable String drawn,
        @Nullable String paint) {}
