package jackwork.parts;

import jackwork.design.SpringEntry;
import jackwork.geometry.Point;
import java.util.List;

/** A spring or band: stiffness N/mm, free length mm. */
public record SpringLink(
        String name, int a, Point onA, int b, Point onB, double stiffness, double free, boolean pullsOnly)
        implements Link {

    @Override
    public List<Integer> bodies() {
        return List.of(a, b);
    }

    /** As it is written. */
    public static SpringLink of(String name, SpringEntry spring, Joining around) {
        return new SpringLink(
                name,
                around.body(spring.from().part()),
                around.at(spring.from()),
                around.body(spring.to().part()),
                around.at(spring.to()),
                spring.stiffness(),
                spring.free(),
                Boolean.TRUE.equals(spring.band()));
    }
}
