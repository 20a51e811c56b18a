package jackwork.parts;

/** A part that cannot be what the design asks: no wood where a rod should go, or a hole that breaks it apart. */
public final class PartException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    PartException(String message) {
        super(message);
    }
}
