package jackwork.design;

/**
 * A kind of joint other than pin, slide and stop: one row of the registry, the service file of this name. What reads the
 * files needs no more than this; what moves, and what is told of it, is in the class that the row names.
 *
 * @param <E> as it is written
 */
public interface JointKind<E extends JointEntry> {

    /** The section that lists such joints: {@code limits}. */
    String section();

    Class<E> entry();

    /** What a maker calls one, and its kind in what is told of a mechanism: {@code limit}. */
    String label();
}
