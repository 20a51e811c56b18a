package jackwork.make;

import jackwork.geometry.InvalidOutlineException;
import java.util.Locale;

/** A piece that no printer can print, since its parts meet along an edge alone. */
public final class PrintException extends MakeException {

    private static final long serialVersionUID = 1L;

    PrintException(String piece, String what, InvalidOutlineException why) {
        super(String.format(
                Locale.ROOT,
                "the printed piece %s (%s) is not one solid: %s near (%.2f, %.2f) mm; look at `printed: %s` in box.yaml or"
                        + " figure.yaml, and let its parts overlap there, or print them apart",
                piece,
                what,
                String.valueOf(why.getMessage()),
                why.at().x(),
                why.at().y(),
                piece));
    }
}
