package jackwork.motion.model;

import jackwork.design.JointEntry;
import jackwork.design.JointKind;
import jackwork.design.JointKinds;
import jackwork.parts.Joining;
import jackwork.parts.Link;
import jackwork.parts.LinkKind;

/**
 * A kind of joint, with its equations: a row of the registry names a class that is one.
 *
 * @param <E> as it is written
 * @param <L> as it holds bodies
 */
public abstract class MechanismKind<E extends JointEntry, L extends Link> implements LinkKind<E, L> {

    /** Share of the approach that comes back when wood strikes wood: a guess, to be measured. */
    public static final double WOOD_ON_WOOD = 0.3;

    /** µN in a N. */
    protected static final double MICRO = 1e6;

    private final String section;
    private final String label;
    private final Class<E> entry;
    private final Class<L> link;
    private final Maker<E, L> maker;

    /** @param maker what an entry makes, in the position drawn */
    protected MechanismKind(String section, String label, Class<E> entry, Class<L> link, Maker<E, L> maker) {
        this.section = section;
        this.label = label;
        this.entry = entry;
        this.link = link;
        this.maker = maker;
    }

    /** A link of an entry. */
    @FunctionalInterface
    protected interface Maker<E, L> {
        L of(String name, E entry, Joining around);
    }

    @Override
    public final String section() {
        return section;
    }

    @Override
    public final String label() {
        return label;
    }

    @Override
    public final Class<E> entry() {
        return entry;
    }

    @Override
    public final Class<L> link() {
        return link;
    }

    @Override
    public final L make(String name, E entry, Joining around) {
        return maker.of(name, entry, around);
    }

    /**
     * Adds its rows to a mechanism.
     *
     * @param number of each of the assembly's bodies in the mechanism
     */
    public abstract void compile(L link, MechanismBuilder builder, int[] number);

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
