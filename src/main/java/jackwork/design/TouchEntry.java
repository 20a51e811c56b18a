package jackwork.design;

import org.jspecify.annotations.Nullable;

@About("Two parts that may push each other where they meet.")
public record TouchEntry(
        @About("One part.") @Names(NameKind.PART) String part,

        @About("The centre of a peg of it that touches; its outline when left out.") @Nullable
        Place peg,

        @About("The peg's rod.") @Names(NameKind.ROD) @Nullable
        String rod,

        @About("The part that it touches, by its outline.") @Names(NameKind.PART)
        String on)
        implements JointEntry {

    @Override
    public void check(String path, Around around) {
        if ((peg == null) != (rod == null)) {
            around.problem(path, "a peg that touches needs both peg (where) and rod (which)");
        }
        if (part.equals(on)) {
            around.problem(path + ".on", "read \"" + on + "\" again; a part touches another one, name that");
        }
    }
}
