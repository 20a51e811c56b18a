package jackwork.motion;

/** A design whose parts, taken together, cannot be moved by the lever alone. */
public final class MechanismException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public MechanismException(String message) {
        super(message);
    }
}
