package jackwork.make;

import jackwork.geometry.Bounds;
import java.util.Locale;

/** A part that no sheet of its stock can hold. */
public final class PartTooLargeException extends MakeException {

    private static final long serialVersionUID = 1L;

    PartTooLargeException(String part, Bounds size, double width, double height) {
        super(String.format(
                Locale.ROOT,
                "%s is %.1f × %.1f mm, its sheet and the laser's bed leave %.1f × %.1f mm;"
                        + " use a larger sheet, or draw it in two parts",
                part,
                size.width(),
                size.height(),
                width,
                height));
    }
}
