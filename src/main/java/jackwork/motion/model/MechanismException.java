package jackwork.motion.model;

/** A design whose parts, taken together, cannot be moved by the lever alone. */
public final class MechanismException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String about;

    public MechanismException(String message) {
        this("", message);
    }

    /** @param about the joint or the body that is the matter, by its name; empty when it is no single one */
    public MechanismException(String about, String message) {
        super(message);
        this.about = about;
    }

    /** The same with its place in the files before it: {@code figure.yaml: pins.knee}. */
    public MechanismException at(String place) {
        return new MechanismException(about, place + ": " + getMessage());
    }

    /** The joint or the body that is the matter, by its name; empty when it is no single one. */
    public String about() {
        return about;
    }
}
