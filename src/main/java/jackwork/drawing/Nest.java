package jackwork.drawing;

import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One piece of a path: its outer line and the holes right within it. */
record Nest(Contour outer, List<Contour> holes) {

    /** A ring narrower than this all round is a line that was turned into its outline, mm. */
    private static final double LINE = 1.2;

    /** A path's closed lines as pieces with their holes: what lies in a hole is a piece again. */
    static List<Nest> of(List<Contour> contours) {
        List<Contour> bySize = new ArrayList<>(contours);
        bySize.removeIf(contour -> contour.points().size() < 3);
        bySize.sort(Comparator.comparingDouble((Contour contour) -> -Math.abs(contour.area())));
        int[] parents = new int[bySize.size()];
        int[] depths = new int[bySize.size()];
        List<Nest> nests = new ArrayList<>();
        List<List<Contour>> holes = new ArrayList<>();
        int[] nestOf = new int[bySize.size()];
        for (int i = 0; i < bySize.size(); i++) {
            Contour contour = bySize.get(i);
            parents[i] = -1;
            for (int j = i - 1; j >= 0 && parents[i] < 0; j--) {
                if (encloses(bySize.get(j).points(), contour.points().get(0))) {
                    parents[i] = j;
                    depths[i] = depths[j] + 1;
                }
            }
            if (depths[i] % 2 == 0) {
                nestOf[i] = nests.size();
                holes.add(new ArrayList<>());
                nests.add(new Nest(contour, holes.get(nestOf[i])));
            } else {
                holes.get(nestOf[parents[i]]).add(contour);
            }
        }
        return nests;
    }

    /** Whether a hole leaves no more of the piece than a drawn line's width all round. */
    boolean isThinLine(Contour hole) {
        double between = Math.abs(outer.area()) - Math.abs(hole.area());
        double round = 0;
        Point before = outer.points().get(outer.points().size() - 1);
        for (Point point : outer.points()) {
            round += point.distance(before);
            before = point;
        }
        return holes.size() == 1 && between < LINE * round && Math.abs(hole.area()) > 0.7 * Math.abs(outer.area());
    }

    /** Whether a ray to the right crosses the line an odd number of times. */
    private static boolean encloses(List<Point> line, Point point) {
        boolean inside = false;
        Point before = line.get(line.size() - 1);
        for (Point here : line) {
            if (here.y() > point.y() != before.y() > point.y()) {
                double along = (point.y() - here.y()) / (before.y() - here.y());
                inside ^= point.x() < here.x() + along * (before.x() - here.x());
            }
            before = here;
        }
        return inside;
    }
}
