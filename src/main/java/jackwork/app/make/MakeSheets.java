package jackwork.app.make;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import java.util.List;

/**
 * The sheets of a batch.
 *
 * @param laid false when laying them out takes so long that it must be asked for; there are none then
 * @param seconds that laying them out took
 */
record MakeSheets(
        String version,
        int quantity,
        boolean laid,
        @Places(1) double seconds,
        List<SheetLaid> sheets,
        List<Needed> needs)
        implements Payload {

    /**
     * @param width of the sheet, mm
     * @param offcutWidth of an offcut that would do, mm
     * @param engrave length engraved, mm
     * @param cut length cut, mm
     * @param minutes at the laser
     * @param share of the sheet that becomes pieces
     * @param svg the file of the pack
     */
    record SheetLaid(
            String name,
            String stock,
            int number,
            double width,
            double height,
            @Places(1) double offcutWidth,
            @Places(1) double offcutHeight,
            @Places(0) double engrave,
            @Places(0) double cut,
            @Places(1) double minutes,
            @Places(3) double share,
            String svg) {}

    /** A line of the bill of materials, less what is on the shelf. */
    record Needed(
            String item,
            @Places(1) double amount,
            String unit,
            String what,
            @Places(1) double toBuy) {}
}
