package jackwork.make;

import jackwork.check.Subject;
import jackwork.geometry.Bounds;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Layers;
import jackwork.parts.Part;
import org.jspecify.annotations.Nullable;

/**
 * The whole piece at rest.
 *
 * @param width mm
 * @param depth mm
 * @param height mm
 * @param mass g, paint, glue and screws not counted
 */
record Parcel(double width, double depth, double height, double mass) {

    /** Free all round, mm: common practice, no source. */
    static final double PADDING = 40;
    /** A carton's wall and what fills it, g a mm² of its surface: a guess. */
    private static final double CARTON = 0.0008;

    static Parcel of(Subject subject, @Nullable Case housing) {
        Assembly assembly = subject.assembly();
        Bounds all = null;
        double mass = 0;
        for (int body = 0; body < assembly.bodies().size(); body++) {
            mass += assembly.body(body).mass();
            Pose rest = Sweep.poses(subject, body).get(0);
            for (Part part : assembly.body(body).parts()) {
                Bounds bounds = part.drawn().moved(rest).bounds();
                all = all == null ? bounds : all.union(bounds);
            }
        }
        double depth = Layers.of(assembly.parts()).total();
        if (all == null) {
            throw new IllegalStateException("a design without parts was not refused on reading");
        }
        if (housing != null) {
            double density = PartsList.density(assembly.workshop(), housing.stock());
            double back = Double.POSITIVE_INFINITY;
            double front = Double.NEGATIVE_INFINITY;
            for (Panel panel : housing.panels()) {
                mass += panel.mass(density);
                Bounds face = panel.outline().bounds();
                switch (panel.axis()) {
                    case Z -> {
                        all = all.union(face);
                        back = Math.min(back, panel.from());
                        front = Math.max(front, panel.to());
                    }
                    case Y -> {
                        all = all.union(new Bounds(face.minX(), panel.from(), face.maxX(), panel.to()));
                        back = Math.min(back, face.minY());
                        front = Math.max(front, face.maxY());
                    }
                    case X -> all = all.union(new Bounds(panel.from(), face.minY(), panel.to(), face.maxY()));
                }
            }
            depth = Math.max(depth, front - back);
        }
        return new Parcel(all.width(), depth, all.height(), mass);
    }

    /** With carton and padding, g. */
    double posted() {
        double w = width + 2 * PADDING;
        double d = depth + 2 * PADDING;
        double h = height + 2 * PADDING;
        return mass + CARTON * 2 * (w * d + d * h + h * w);
    }
}
