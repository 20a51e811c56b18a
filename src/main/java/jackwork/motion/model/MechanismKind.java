package jackwork.motion.model;

import jackwork.design.JointEntry;
import jackwork.design.JointKind;
import jackwork.design.JointKinds;
import jackwork.parts.Link;
import jackwork.parts.LinkKind;

/**
 * A kind of joint, with its equations: a row of the registry names a class that is one.
 *
 * @param <E> as it is written
 * @param <L> as it holds bodies
 */
public interface MechanismKind<E extends JointEntry, L extends Link> extends LinkKind<E, L> {

    /** Share of the approach that comes back when wood strikes wood: a guess, to be measured. */
    double WOOD_ON_WOOD = 0.3;

    /** µN in a N. */
    double MICRO = 1e6;

    /**
     * Adds its rows to a mechanism.
     *
     * @param number of each of the assembly's bodies in the mechanism
     */
    void compile(L link, MechanismBuilder builder, int[] number);

    /** Adds a link, whatever its kind. */
    static void add(Link link, MechanismBuilder builder, int[] number) {
        for (JointKind<?> kind : JointKinds.all()) {
            if (((LinkKind<?, ?>) kind).link() == link.getClass()) {
                add((MechanismKind<?, ?>) kind, link, builder, number);
                return;
            }
        }
        throw new IllegalArgumentException("no row of the registry makes " + link);
    }

    private static <L extends Link> void add(
            MechanismKind<?, L> kind, Link link, MechanismBuilder builder, int[] number) {
        kind.compile(kind.link().cast(link), builder, number);
    }
}
