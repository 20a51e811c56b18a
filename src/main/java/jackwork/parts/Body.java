package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.geometry.SectionProperties;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts glued into one, with what is fixed to them.
 *
 * @param name of its first part; {@code box} for the ground
 * @param mass g
 * @param centre of mass as drawn, mm
 * @param inertia about the centre of mass, g·mm²
 */
public record Body(String name, List<Part> parts, List<Lump> lumps, double mass, Point centre, double inertia) {

    /** The name of everything that never moves. */
    public static final String GROUND = "box";

    static Body of(String name, List<Part> parts, List<Lump> lumps) {
        List<double[]> pieces = new ArrayList<>();
        for (Part part : parts) {
            SectionProperties section = part.section();
            pieces.add(new double[] {
                part.mass(), section.centroid().x(), section.centroid().y(), section.polarMoment() * part.arealDensity()
            });
        }
        for (Lump lump : lumps) {
            double own = lump.mass() * lump.radius() * lump.radius() / 2;
            pieces.add(new double[] {lump.mass(), lump.at().x(), lump.at().y(), own});
        }
        double mass = 0;
        double x = 0;
        double y = 0;
        for (double[] piece : pieces) {
            mass += piece[0];
            x += piece[0] * piece[1];
            y += piece[0] * piece[2];
        }
        Point centre = new Point(x / mass, y / mass);
        double inertia = 0;
        for (double[] piece : pieces) {
            // Steiner: about the common centre, each piece adds m d².
            double distance = centre.distance(new Point(piece[1], piece[2]));
            inertia += piece[3] + piece[0] * distance * distance;
        }
        return new Body(name, List.copyOf(parts), List.copyOf(lumps), mass, centre, inertia);
    }

    public boolean isGround() {
        return name.equals(GROUND);
    }
}
