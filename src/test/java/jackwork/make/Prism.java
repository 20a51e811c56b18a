package jackwork.make;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A flat part standing in space, cut by scan lines: nothing here comes from the code that makes the panels, so that the
 * two can be held against each other.
 */
record Prism(String name, Panel.Axis axis, double from, double to, Outline outline, List<Circle> holes) {

    static Prism of(Panel panel) {
        return new Prism(panel.name(), panel.axis(), panel.from(), panel.to(), panel.outline(), panel.holes());
    }

    /** The same without its screw holes. */
    Prism unbored() {
        return new Prism(name, axis, from, to, outline, List.of());
    }

    double middle() {
        return (from + to) / 2;
    }

    /** Whether the second of its two plane coordinates is this axis; else the first is. */
    private boolean isSecond(Panel.Axis shared) {
        // (x, y) for Z, (z, y) for X, (x, z) for Y.
        return axis == Panel.Axis.Y ? shared == Panel.Axis.Z : shared == Panel.Axis.Y;
    }

    /**
     * Wood along a line in its plane: sorted {from, to}.
     *
     * @param along the axis that the line runs along
     * @param at where it is on the other
     */
    List<double[]> wood(Panel.Axis along, double at) {
        boolean second = isSecond(along);
        TreeSet<Double> crossings = new TreeSet<>();
        List<List<Point>> rings = new ArrayList<>(outline.holes());
        rings.add(outline.outer());
        for (List<Point> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Point p = ring.get(i);
                Point q = ring.get((i + 1) % ring.size());
                double pAt = second ? p.x() : p.y();
                double qAt = second ? q.x() : q.y();
                if ((pAt > at) != (qAt > at)) {
                    double share = (at - pAt) / (qAt - pAt);
                    double u = second ? p.y() : p.x();
                    double v = second ? q.y() : q.x();
                    crossings.add(u + share * (v - u));
                }
            }
        }
        List<double[]> intervals = new ArrayList<>();
        List<Double> sorted = new ArrayList<>(crossings);
        for (int i = 0; i + 1 < sorted.size(); i += 2) {
            intervals.add(new double[] {sorted.get(i), sorted.get(i + 1)});
        }
        for (Circle hole : holes) {
            double off = at - (second ? hole.centre().x() : hole.centre().y());
            if (Math.abs(off) < hole.radius()) {
                double half = Math.sqrt(hole.radius() * hole.radius() - off * off);
                double c = second ? hole.centre().y() : hole.centre().x();
                intervals = without(intervals, c - half, c + half);
            }
        }
        return intervals;
    }

    private static List<double[]> without(List<double[]> intervals, double low, double high) {
        List<double[]> rest = new ArrayList<>();
        for (double[] i : intervals) {
            if (Math.min(i[1], low) > i[0]) {
                rest.add(new double[] {i[0], Math.min(i[1], low)});
            }
            if (i[1] > Math.max(i[0], high)) {
                rest.add(new double[] {Math.max(i[0], high), i[1]});
            }
        }
        return rest;
    }

    /** Volume shared with another, mm³: exact for right-angled outlines, by slices of {@code step} mm for others. */
    double shared(Prism other, double step) {
        if (axis == other.axis) {
            double depth = Math.min(to, other.to) - Math.max(from, other.from);
            return depth <= 1e-9 ? 0 : depth * outline.sharedArea(other.outline);
        }
        Panel.Axis shared = sharedAxis(other);
        TreeSet<Double> levels = new TreeSet<>();
        levels(shared, levels);
        other.levels(shared, levels);
        List<Double> sorted = new ArrayList<>(levels);
        double volume = 0;
        for (int i = 0; i + 1 < sorted.size(); i++) {
            int slices = (int) Math.max(1, Math.ceil((sorted.get(i + 1) - sorted.get(i)) / step));
            double thick = (sorted.get(i + 1) - sorted.get(i)) / slices;
            for (int k = 0; k < slices; k++) {
                double level = sorted.get(i) + (k + 0.5) * thick;
                volume += thick
                        * length(wood(other.axis, level), other.from, other.to)
                        * length(other.wood(axis, level), from, to);
            }
        }
        return volume;
    }

    Panel.Axis sharedAxis(Prism other) {
        for (Panel.Axis candidate : Panel.Axis.values()) {
            if (candidate != axis && candidate != other.axis) {
                return candidate;
            }
        }
        throw new IllegalStateException();
    }

    private void levels(Panel.Axis shared, TreeSet<Double> levels) {
        List<List<Point>> rings = new ArrayList<>(outline.holes());
        rings.add(outline.outer());
        rings.forEach(ring -> ring.forEach(p -> levels.add(isSecond(shared) ? p.y() : p.x())));
    }

    private static double length(List<double[]> intervals, double low, double high) {
        double length = 0;
        for (double[] i : intervals) {
            length += Math.max(0, Math.min(i[1], high) - Math.max(i[0], low));
        }
        return length;
    }
}
