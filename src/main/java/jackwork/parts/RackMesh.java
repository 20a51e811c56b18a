package jackwork.parts;

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
        implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    @Override
    public List<FrictionPair> frictions() {
        return List.of(friction);
    }

    @Override
    public Link rubbing(FrictionPair pair, FrictionPair other) {
        FrictionPair now = Link.changed(friction, pair, other);
        return new RackMesh(name, a, centre, gear, gearPart, b, pitchPoint, rackPart, now);
    }
}
