package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.Place;
import jackwork.design.Works;
import jackwork.geometry.Point;
import org.jspecify.annotations.Nullable;

/** Places of a box or a figure in the common frame. */
final class Places {

    private Places() {}

    /** @param fallback the circle meant when no place is written */
    static Point at(Design design, Works works, @Nullable Place place, String fallback) {
        return design.isOfBox(works) ? design.inBox(place, fallback) : design.inFigure(place, fallback);
    }
}
