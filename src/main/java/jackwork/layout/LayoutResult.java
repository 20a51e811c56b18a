package jackwork.layout;

import java.util.List;

/**
 * A valid layout.
 *
 * @param sheets how many
 * @param length of the last one that is used, mm; the others count whole
 */
public record LayoutResult(int sheets, double length, List<Placed> placed) {

    /** Whether it needs less than another. */
    boolean betterThan(LayoutResult other) {
        return sheets != other.sheets ? sheets < other.sheets : length < other.length;
    }
}
