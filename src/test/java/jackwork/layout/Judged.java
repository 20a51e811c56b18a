package jackwork.layout;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** Layouts judged by the JDK's own areas, which share nothing with the search or with {@link Outline}. */
final class Judged {

    /** Touching pieces may share this much of the smaller one's area. */
    private static final double TOUCH = 1e-5;

    private Judged() {}

    static void valid(List<Piece> pieces, LayoutResult result, double length, double width) {
        assertThat(result.placed())
                .extracting(Placed::piece)
                .containsExactlyElementsOf(java.util.stream.IntStream.range(0, pieces.size())
                        .boxed()
                        .toList());
        List<Area> lying = new ArrayList<>();
        for (Placed placed : result.placed()) {
            Piece piece = pieces.get(placed.piece());
            Area area = area(piece, placed);
            assertThat(measure(area)).isCloseTo(piece.outline().area(), within(1e-9 * length * width));
            double end = placed.sheet() == result.sheets() - 1 ? result.length() : length;
            assertThat(placed.sheet()).isBetween(0, result.sheets() - 1);
            assertThat(area.getBounds2D().getMinX()).isGreaterThan(-1e-6);
            assertThat(area.getBounds2D().getMinY()).isGreaterThan(-1e-6);
            assertThat(area.getBounds2D().getMaxX()).isLessThan(end + 1e-6);
            assertThat(area.getBounds2D().getMaxY()).isLessThan(width + 1e-6);
            turned(piece, placed);
            lying.add(area);
        }
        for (int i = 0; i < lying.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (result.placed().get(i).sheet() == result.placed().get(j).sheet()) {
                    assertThat(shared(lying.get(i), lying.get(j)))
                            .as(
                                    "what %s and %s share",
                                    pieces.get(i).name(), pieces.get(j).name())
                            .isLessThan(TOUCH * Math.min(measure(lying.get(i)), measure(lying.get(j))));
                }
            }
        }
    }

    private static void turned(Piece piece, Placed placed) {
        if (!piece.turns().isEmpty()) {
            assertThat(piece.turns())
                    .anySatisfy(
                            turn -> assertThat(placed.pose().angle()).isCloseTo(Math.toRadians(turn), within(1e-12)));
        }
    }

    static double shared(Area one, Area other) {
        Area shared = new Area(one);
        shared.intersect(other);
        return measure(shared);
    }

    static Area area(Piece piece, Placed placed) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        ring(path, piece.outline().outer());
        piece.outline().holes().forEach(hole -> ring(path, hole));
        AffineTransform lies = AffineTransform.getTranslateInstance(
                placed.pose().x(), placed.pose().y());
        lies.rotate(placed.pose().angle());
        return new Area(path).createTransformedArea(lies);
    }

    private static void ring(Path2D path, List<Point> ring) {
        path.moveTo(ring.get(0).x(), ring.get(0).y());
        ring.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
    }

    /** By Gauss's formula; an area's holes run against its outsides. */
    static double measure(Area area) {
        double sum = 0;
        double[] from = new double[2];
        double[] first = new double[2];
        double[] to = new double[6];
        for (PathIterator at = area.getPathIterator(null); !at.isDone(); at.next()) {
            int kind = at.currentSegment(to);
            if (kind == PathIterator.SEG_MOVETO) {
                first = new double[] {to[0], to[1]};
            } else {
                double[] end = kind == PathIterator.SEG_CLOSE ? first : to;
                sum += from[0] * end[1] - end[0] * from[1];
            }
            from = kind == PathIterator.SEG_CLOSE ? first.clone() : new double[] {to[0], to[1]};
        }
        return Math.abs(sum) / 2;
    }

    private static org.assertj.core.data.Offset<Double> within(double by) {
        return org.assertj.core.data.Offset.offset(by);
    }
}
