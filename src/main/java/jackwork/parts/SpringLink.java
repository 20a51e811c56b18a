package jackwork.parts;

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
}
