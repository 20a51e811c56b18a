package jackwork.parts;

import jackwork.geometry.InvalidOutlineException;
import jackwork.geometry.Outline;
import java.util.function.Supplier;

/**
 * A part that cannot be what the design asks: no wood where a rod should go, or a hole that breaks it apart. Begins with the
 * file and the key that ask it.
 */
public final class PartException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param place as {@code figure.yaml: pins.hip} */
    PartException(String place, String message) {
        super(place + ": " + message);
    }

    /**
     * An outline that is made of numbers, or cut by them.
     *
     * @param place of the numbers, as {@code figure.yaml: slides.track}
     * @param part whose outline it is
     * @param numbers that decide it, as a maker finds them in the files
     * @throws PartException in words where it bounds no region
     */
    static Outline unless(String place, String part, String numbers, Supplier<Outline> made) {
        try {
            return made.get();
        } catch (InvalidOutlineException e) {
            throw new PartException(
                    place,
                    numbers + " leave " + part + " no outline that can be cut (" + e.getMessage()
                            + "); take larger teeth, a smaller motion or a narrower slot");
        }
    }
}
