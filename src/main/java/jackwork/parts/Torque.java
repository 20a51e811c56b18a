package jackwork.parts;

import java.util.List;

/** A steady torque on a body, N·mm, counter-clockwise positive. */
public record Torque(String name, int body, double moment) implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(body);
    }
}
