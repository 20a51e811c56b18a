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
        return new Torque(name, around.body(torque.on()), torque.moment());
    }
}
