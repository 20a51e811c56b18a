package jackwork.check;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.SectionProperties;
import java.util.List;
import java.util.Optional;

/**
 * Where two layers cover each other, glued.
 *
 * @param area mm²
 * @param middle of it
 * @param polar second moment about that, mm⁴
 * @param reach from there to its farthest corner, mm
 */
record GluedLap(double area, Point middle, double polar, double reach) {

    /** Nothing where they cover nothing of each other. */
    static Optional<GluedLap> of(List<Outline> shared) {
        double area = 0;
        Point sum = Point.ORIGIN;
        for (Outline outline : shared) {
            SectionProperties section = SectionProperties.of(outline);
            area += section.area();
            sum = sum.plus(section.centroid().times(section.area()));
        }
        if (!(area > 0)) {
            return Optional.empty();
        }
        Point middle = sum.times(1 / area);
        double polar = 0;
        double reach = 0;
        for (Outline outline : shared) {
            SectionProperties section = SectionProperties.of(outline);
            double off = section.centroid().distance(middle);
            polar += section.polarMoment() + section.area() * off * off;
            for (Point corner : outline.outer()) {
                reach = Math.max(reach, corner.distance(middle));
            }
        }
        return Optional.of(new GluedLap(area, middle, polar, reach));
    }

    /**
     * Greatest in the glued face, N/mm².
     *
     * @param force through it, N
     * @param twist about its middle, N·mm
     */
    double stress(Point force, double twist) {
        return force.length() / area + Math.abs(twist) * reach / polar;
    }
}
