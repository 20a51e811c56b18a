package jackwork.parts;

import jackwork.design.RackEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * A gear on a rack.
 *
 * @param a body of the gear
 * @param b body of the rack
 * @param pitchPoint where the gear's pitch circle touches the rack's pitch line
 */
public record RackMesh(
        String name,
        int a,
        Point centre,
        InvoluteGear gear,
        String gearPart,
        int b,
        Point pitchPoint,
        String rackPart,
        FrictionPair friction)
        implements Rubbing {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    @Override
    public Link with(FrictionPair other) {
        return new RackMesh(name, a, centre, gear, gearPart, b, pitchPoint, rackPart, other);
    }

    /** As it is written. */
    public static RackMesh of(String name, RackEntry rack, Joining around) {
        Teeth.Placed gear = around.gear(rack.gear());
        Point pitchPoint =
                gear.centre().plus(new Point(gear.gear().pitchRadius(), 0).turned(Math.toRadians(rack.toward())));
        return new RackMesh(
                name,
                around.body(gear.entry().part()),
                gear.centre(),
                gear.gear(),
                gear.entry().part(),
                around.body(rack.part()),
                pitchPoint,
                rack.part(),
                around.between(gear.entry().part(), rack.part()));
    }
}
