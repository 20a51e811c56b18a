package jackwork.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes against closed forms; every edge has exactly two triangles, run through in opposite directions. */
@Tag("quick")
class SolidMeshTest {

    private static Solid.Slab slab(Outline outline, double from, double to) {
        return new Solid.Slab(outline, from, to);
    }

    /** Rules of 3MF Core 1.4.0, 4.1.4: each edge shared by exactly two triangles, in opposite directions. */
    private static void assertClosed(Mesh mesh) {
        Map<List<Integer>, Integer> directed = new HashMap<>();
        for (int i = 0; i < mesh.triangles().length; i += 3) {
            for (int k = 0; k < 3; k++) {
                int a = mesh.triangles()[i + k];
                int b = mesh.triangles()[i + (k + 1) % 3];
                assertThat(a).isNotEqualTo(b);
                directed.merge(List.of(a, b), 1, Integer::sum);
            }
        }
        directed.forEach((edge, times) -> {
            assertThat(times).isEqualTo(1);
            assertThat(directed).containsKey(List.of(edge.get(1), edge.get(0)));
        });
    }

    private static void assertVolume(Solid solid, double expected) {
        Mesh mesh = SolidMesh.of(solid);
        assertClosed(mesh);
        assertThat(mesh.volume()).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void plainBodies() {
        assertVolume(new Solid(List.of(slab(Outline.rectangle(0, 0, 10, 20), 0, 30))), 6000);
        // A step: two boxes, one upon the other, overhanging.
        assertVolume(
                new Solid(List.of(
                        slab(Outline.rectangle(0, 0, 10, 10), 0, 3), slab(Outline.rectangle(5, 2, 20, 8), 3, 5))),
                300 + 180);
        // Overlapping slabs count once.
        assertVolume(
                new Solid(List.of(
                        slab(Outline.rectangle(0, 0, 10, 10), 0, 4), slab(Outline.rectangle(5, 5, 15, 15), 2, 6))),
                400 + 400 - 50);
    }

    @Test
    void aRingIsTheDifferenceOfTwoPolygons() {
        Outline disc = Outline.disc(new Circle(Point.ORIGIN, 4), 0.005);
        int outer = disc.outer().size();
        Outline ring = disc.without(new Circle(Point.ORIGIN, 1.7), 0.005);
        int inner = ring.holes().get(0).size();
        double expected = 25.5
                / 2
                * (outer * 16 * Math.sin(2 * Math.PI / outer) - inner * 1.7 * 1.7 * Math.sin(2 * Math.PI / inner));
        assertVolume(new Solid(List.of(slab(ring, 0, 25.5))), expected);
    }

    /** Star outlines at random heights, one upon the other and apart: the volume is the sum of area by height. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void randomStacks(long seed) {
        Random random = new Random(seed);
        List<Solid.Slab> slabs = new ArrayList<>();
        double expected = 0;
        double z = 0;
        for (int i = 0; i < 4; i++) {
            Outline star = star(random, 5 + random.nextInt(20));
            double thick = 1 + random.nextDouble() * 3;
            slabs.add(slab(star, z, z + thick));
            expected += star.area() * thick;
            z += thick;
        }
        assertVolume(new Solid(slabs), expected);
    }

    private static Outline star(Random random, int corners) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
            double radius = 5 + 15 * random.nextDouble();
            ring.add(new Point(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        return Outline.of(ring, List.of(List.of(new Point(-1, -1), new Point(1, -1), new Point(0, 1.5))));
    }

    @Test
    void bodiesThatTouchAlongAnEdgeAloneAreRefused() {
        Solid solid = new Solid(
                List.of(slab(Outline.rectangle(0, 0, 10, 10), 0, 3), slab(Outline.rectangle(10, 0, 20, 10), 3, 6)));
        assertThatThrownBy(() -> SolidMesh.of(solid))
                .isInstanceOf(InvalidOutlineException.class)
                .hasMessageContaining("edge alone");
    }
}
