package jackwork.parts;

import jackwork.design.JointEntry;
import jackwork.design.JointKind;

/**
 * A kind of joint, with what the parts make of it.
 *
 * @param <E> as it is written
 * @param <L> as it holds bodies
 */
public interface LinkKind<E extends JointEntry, L extends Link> extends JointKind<E> {

    Class<L> link();

    /** What an entry makes, in the position drawn. */
    L make(String name, E entry, Joining around);

    /** What an outsider must know of it, besides name, bodies and label, to write its equations: docs/mechanism.md. */
    void describe(L link, Description out);
}
