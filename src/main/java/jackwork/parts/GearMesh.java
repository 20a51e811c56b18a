package jackwork.parts;

import jackwork.design.MeshEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * Two gears in mesh.
 *
 * @param a body of the first
 * @param gearA its teeth
 * @param gearB teeth of the second, or of the hole when {@code inside}
 * @param inside whether the first runs inside the second
 */
public record GearMesh(
        String name,
        int a,
        Point centreA,
        InvoluteGear gearA,
        String partA,
        int b,
        Point centreB,
        InvoluteGear gearB,
        String partB,
        boolean inside,
        FrictionPair friction)
        implements Rubbing {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    @Override
    public Link with(FrictionPair other) {
        return new GearMesh(name, a, centreA, gearA, partA, b, centreB, gearB, partB, inside, other);
    }

    /** Gear B is the ring, when one of the two is. */
    public static GearMesh of(String name, MeshEntry mesh, Joining around) {
        Teeth.Placed first = around.gear(mesh.between().get(0));
        Teeth.Placed second = around.gear(mesh.between().get(1));
        boolean swapped = Teeth.isInside(first.entry());
        Teeth.Placed a = swapped ? second : first;
        Teeth.Placed b = swapped ? first : second;
        return new GearMesh(
                name,
                around.body(a.entry().part()),
                a.centre(),
                a.gear(),
                a.entry().part(),
                around.body(b.entry().part()),
                b.centre(),
                b.gear(),
                b.entry().part(),
                Teeth.isInside(b.entry()),
                around.between(a.entry().part(), b.entry().part()));
    }
}
