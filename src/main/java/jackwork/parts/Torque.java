package jackwork.parts;

import jackwork.design.TorqueEntry;
import java.util.List;

/** A steady torque on a body, N·mm, counter-clockwise positive. */
public record Torque(String name, int body, double moment) implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(body);
    }

    /** As it is written. */
    public static Torque of(String name, TorqueEntry torque, Joining around) {
        int body = around.body(torque.on());
        if (body == 0) {
            throw new PartException(
                    around.design().fileOf(around.works()) + ": torques." + name + ".on",
                    torque.on() + " never moves, so that nothing can turn it; name a part that turns");
        }
        return new Torque(name, body, torque.moment());
    }
}
