package jackwork.make;

import jackwork.geometry.InvalidOutlineException;
import java.util.Locale;

/** A case whose panels fall apart: their sheet is too thick, or the case too small for what goes through it. */
public final class CaseException extends MakeException {

    private static final long serialVersionUID = 1L;

    CaseException(String stock, double thickness, InvalidOutlineException why) {
        super(String.format(
                Locale.ROOT,
                "no case can be cut from %s, %.2f mm thick: one of its panels is no whole outline any more (%s); use a thinner sheet for the case, or"
                        + " make it larger",
                stock,
                thickness,
                String.valueOf(why.getMessage()).toLowerCase(Locale.ROOT)));
    }
}
