package jackwork.make;

import jackwork.geometry.InvalidOutlineException;
import java.util.Locale;

/** A case whose panels fall apart: their sheet is too thick, or the case too small for what goes through it. */
public final class CaseException extends MakeException {

    private static final long serialVersionUID = 1L;

    CaseException(String stock, double thickness, InvalidOutlineException why) {
        super(String.format(
                Locale.ROOT,
                "no case can be cut from %s, %.2f mm thick: one of its panels falls apart (%s); look at the case's left,"
                        + " floor, width, height and depth against the works in it, or use a thinner sheet for it",
                stock,
                thickness,
                String.valueOf(why.getMessage()).toLowerCase(Locale.ROOT)));
    }
}
