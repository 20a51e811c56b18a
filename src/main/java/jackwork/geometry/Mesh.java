package jackwork.geometry;

/**
 * A closed surface of triangles, counter-clockwise seen from outside.
 *
 * @param vertices x, y, z of each, mm, [3 × vertices]
 * @param triangles three vertex numbers each, [3 × triangles]
 */
@SuppressWarnings("ArrayRecordComponent") // Read in place by the writers; never shared for writing.
public record Mesh(double[] vertices, int[] triangles) {

    public int vertexCount() {
        return vertices.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** By the divergence theorem: a sixth of the sum of a · (b × c) over all triangles, mm³. */
    public double volume() {
        double sum = 0;
        for (int i = 0; i < triangles.length; i += 3) {
            int a = 3 * triangles[i];
            int b = 3 * triangles[i + 1];
            int c = 3 * triangles[i + 2];
            double x = vertices[b + 1] * vertices[c + 2] - vertices[b + 2] * vertices[c + 1];
            double y = vertices[b + 2] * vertices[c] - vertices[b] * vertices[c + 2];
            double z = vertices[b] * vertices[c + 1] - vertices[b + 1] * vertices[c];
            sum += vertices[a] * x + vertices[a + 1] * y + vertices[a + 2] * z;
        }
        return sum / 6;
    }

    /** The same with its least corner at the origin: printers count from there. */
    public Mesh atOrigin() {
        double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        for (int i = 0; i < vertices.length; i++) {
            least[i % 3] = Math.min(least[i % 3], vertices[i]);
        }
        double[] moved = new double[vertices.length];
        for (int i = 0; i < vertices.length; i++) {
            moved[i] = vertices[i] - least[i % 3];
        }
        return new Mesh(moved, triangles);
    }
}
