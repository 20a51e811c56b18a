package jackwork.geometry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/**
 * The surface of a solid. The outlines of all slabs together cut the plane into faces; each face is wood or air between
 * any two neighbouring levels. The surface is what parts wood from air: faces at levels, edges of faces between levels.
 * Every triangle ends at corners of this one net, so that no gap can open between them.
 */
public final class SolidMesh {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Corners nearer than this are one, mm. */
    private static final double ONE_CORNER = 1e-7;

    private final List<Polygon> faces;
    private final double[] levels;
    /** Wood, by face and gap between levels. */
    private final boolean[][] wood;

    private final Map<Coordinate, Integer> corners = new HashMap<>();
    private final List<Coordinate> places = new ArrayList<>();
    private final List<double[]> vertices = new ArrayList<>();
    private final Map<Long, Integer> numbers = new HashMap<>();
    private final List<int[]> triangles = new ArrayList<>();

    private SolidMesh(List<Polygon> faces, double[] levels, boolean[][] wood) {
        this.faces = faces;
        this.levels = levels;
        this.wood = wood;
    }

    /**
     * @throws InvalidOutlineException when two parts of it touch along an edge alone, so that no printer knows whether they
     *     are one
     */
    public static Mesh of(Solid solid) {
        List<Polygon> faces = faces(solid);
        TreeSet<Double> cuts = new TreeSet<>();
        for (Solid.Slab slab : solid.slabs()) {
            cuts.add(slab.from());
            cuts.add(slab.to());
        }
        double[] levels = levels(cuts);
        boolean[][] wood = new boolean[faces.size()][levels.length - 1];
        for (int face = 0; face < faces.size(); face++) {
            Point inside = faces.get(face).getInteriorPoint();
            jackwork.geometry.Point at = new jackwork.geometry.Point(inside.getX(), inside.getY());
            for (Solid.Slab slab : solid.slabs()) {
                if (slab.outline().contains(at)) {
                    for (int gap = 0; gap < levels.length - 1; gap++) {
                        double middle = (levels[gap] + levels[gap + 1]) / 2;
                        wood[face][gap] |= slab.from() < middle && middle < slab.to();
                    }
                }
            }
        }
        SolidMesh mesh = new SolidMesh(faces, levels, wood);
        mesh.addFaces();
        mesh.addWalls();
        return mesh.finish();
    }

    private static double[] levels(SortedSet<Double> cuts) {
        List<Double> kept = new ArrayList<>();
        for (double cut : cuts) {
            if (kept.isEmpty() || cut - kept.get(kept.size() - 1) > ONE_CORNER) {
                kept.add(cut);
            }
        }
        return kept.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<Polygon> faces(Solid solid) {
        List<Geometry> lines = new ArrayList<>();
        for (Solid.Slab slab : solid.slabs()) {
            lines.add(line(slab.outline().outer()));
            slab.outline().holes().forEach(hole -> lines.add(line(hole)));
        }
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(Overlay.together(lines, FACTORY));
        List<Polygon> faces = new ArrayList<>();
        for (Object polygon : (Collection<?>) polygonizer.getPolygons()) {
            Polygon face = (Polygon) polygon;
            face.normalize();
            faces.add(face);
        }
        return faces;
    }

    private static LineString line(List<jackwork.geometry.Point> ring) {
        Coordinate[] coordinates = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            jackwork.geometry.Point p = ring.get(i % ring.size());
            coordinates[i] = new Coordinate(p.x(), p.y());
        }
        return FACTORY.createLineString(coordinates);
    }

    private int corner(Coordinate at) {
        return corners.computeIfAbsent(new Coordinate(at.x, at.y), k -> {
            places.add(k);
            return places.size() - 1;
        });
    }

    private int vertex(Coordinate at, int level) {
        long key = (long) corner(at) * (levels.length + 1) + level;
        return numbers.computeIfAbsent(key, k -> {
            vertices.add(new double[] {at.x, at.y, levels[level]});
            return vertices.size() - 1;
        });
    }

    /** Lids and floors: wherever wood ends upward or downward. */
    private void addFaces() {
        for (int face = 0; face < faces.size(); face++) {
            Geometry cut = ConstrainedDelaunayTriangulator.triangulate(faces.get(face));
            for (int level = 0; level < levels.length; level++) {
                boolean below = level > 0 && wood[face][level - 1];
                boolean above = level < levels.length - 1 && wood[face][level];
                if (below == above) {
                    continue;
                }
                for (int i = 0; i < cut.getNumGeometries(); i++) {
                    Coordinate[] c = cut.getGeometryN(i).getCoordinates();
                    int a = vertex(c[0], level);
                    int b = vertex(c[1], level);
                    int d = vertex(c[2], level);
                    boolean up = Orientation.index(c[0], c[1], c[2]) == Orientation.COUNTERCLOCKWISE;
                    triangles.add(up == below ? new int[] {a, b, d} : new int[] {a, d, b});
                }
            }
        }
    }

    /** Walls: wherever an edge has wood on one side alone. */
    private void addWalls() {
        Map<List<Integer>, int[]> sides = new LinkedHashMap<>();
        for (int face = 0; face < faces.size(); face++) {
            Polygon polygon = faces.get(face);
            rim(polygon.getExteriorRing().getCoordinates(), true, face, sides);
            for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
                rim(polygon.getInteriorRingN(hole).getCoordinates(), false, face, sides);
            }
        }
        sides.forEach((edge, side) -> {
            Coordinate from = places.get(edge.get(0));
            Coordinate to = places.get(edge.get(1));
            for (int gap = 0; gap < levels.length - 1; gap++) {
                boolean left = side[0] >= 0 && wood[side[0]][gap];
                boolean right = side[1] >= 0 && wood[side[1]][gap];
                if (left != right) {
                    wall(left ? from : to, left ? to : from, gap);
                }
            }
        });
    }

    /** Faces to the left and to the right of each edge, directed from its lower corner number. */
    private void rim(Coordinate[] ring, boolean outer, int face, Map<List<Integer>, int[]> sides) {
        boolean turn = Orientation.isCCW(ring) != outer;
        for (int i = 0; i + 1 < ring.length; i++) {
            int a = corner(turn ? ring[i + 1] : ring[i]);
            int b = corner(turn ? ring[i] : ring[i + 1]);
            int[] side = sides.computeIfAbsent(a < b ? List.of(a, b) : List.of(b, a), k -> new int[] {-1, -1});
            side[a < b ? 0 : 1] = face;
        }
    }

    /** Wood is to the left of the way from one corner to the other, so outside is to the right. */
    private void wall(Coordinate from, Coordinate to, int gap) {
        int a = vertex(from, gap);
        int b = vertex(to, gap);
        int c = vertex(to, gap + 1);
        int d = vertex(from, gap + 1);
        triangles.add(new int[] {a, b, c});
        triangles.add(new int[] {a, c, d});
    }

    private Mesh finish() {
        Map<Long, Integer> edges = new HashMap<>();
        for (int[] t : triangles) {
            for (int i = 0; i < 3; i++) {
                long a = t[i];
                long b = t[(i + 1) % 3];
                edges.merge(a * vertices.size() + b, 1, Integer::sum);
            }
        }
        edges.forEach((edge, times) -> {
            long back = edge % vertices.size() * vertices.size() + edge / vertices.size();
            if (times != 1 || edges.getOrDefault(back, 0) != 1) {
                double[] at = vertices.get((int) (edge / vertices.size()));
                throw new InvalidOutlineException(
                        "the solid is not closed, or touches itself along an edge alone",
                        new jackwork.geometry.Point(at[0], at[1]));
            }
        });
        double[] flat = new double[3 * vertices.size()];
        for (int i = 0; i < vertices.size(); i++) {
            System.arraycopy(vertices.get(i), 0, flat, 3 * i, 3);
        }
        int[] numbered =
                triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray();
        return new Mesh(flat, numbered);
    }
}
