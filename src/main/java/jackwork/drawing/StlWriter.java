package jackwork.drawing;

import jackwork.geometry.Mesh;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * A mesh as binary STL: 80 bytes that must not begin with {@code solid}, a count, and for each triangle its normal and
 * three corners as 32-bit floats, little-endian. The format knows no unit; mm by convention.
 */
public final class StlWriter {

    private static final int HEADER = 80;
    private static final int TRIANGLE = 50;

    private StlWriter() {}

    public static byte[] write(Mesh mesh) {
        ByteBuffer out = ByteBuffer.allocate(HEADER + 4 + TRIANGLE * mesh.triangleCount())
                .order(ByteOrder.LITTLE_ENDIAN);
        out.put("binary STL, mm".getBytes(StandardCharsets.US_ASCII));
        out.position(HEADER);
        out.putInt(mesh.triangleCount());
        double[] v = mesh.vertices();
        for (int i = 0; i < mesh.triangles().length; i += 3) {
            int a = 3 * mesh.triangles()[i];
            int b = 3 * mesh.triangles()[i + 1];
            int c = 3 * mesh.triangles()[i + 2];
            double[] p = {v[b] - v[a], v[b + 1] - v[a + 1], v[b + 2] - v[a + 2]};
            double[] q = {v[c] - v[a], v[c + 1] - v[a + 1], v[c + 2] - v[a + 2]};
            double[] normal = {p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]};
            double length = Math.sqrt(normal[0] * normal[0] + normal[1] * normal[1] + normal[2] * normal[2]);
            for (double n : normal) {
                out.putFloat((float) (length > 0 ? n / length : 0));
            }
            for (int corner : new int[] {a, b, c}) {
                out.putFloat((float) v[corner]).putFloat((float) v[corner + 1]).putFloat((float) v[corner + 2]);
            }
            out.putShort((short) 0);
        }
        return out.array();
    }
}
