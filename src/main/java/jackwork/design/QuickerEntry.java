package jackwork.design;

import jackwork.stock.Uncertain;
import org.jspecify.annotations.Nullable;

/**
 * @param jigSaves of gluing, with a jig for every stack, percent
 * @param jigHours to make the jigs, hours
 * @param jigStock that they are made of
 * @param tabHours to draw tabs into the parts and try them, hours
 * @param sleeveHours to try printed pivots, hours
 * @param printHours to try a stack printed in one, hours
 * @param pictureHours to draw a picture for each painted part, hours
 */
@About("What quicker ways of making cost.")
public record QuickerEntry(
        @Unit("%") @Nullable Uncertain jigSaves,
        @Unit("h") @Nullable Uncertain jigHours,
        @Unit("1") @Nullable Uncertain jigStock,
        @Unit("h") @Nullable Uncertain tabHours,
        @Unit("h") @Nullable Uncertain sleeveHours,
        @Unit("h") @Nullable Uncertain printHours,
        @Unit("h") @Nullable Uncertain pictureHours) {}
