package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.check.Nonsense.Verdict;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written to be one is one: held against small cubes that are filled from the first on. */
class HangsTogetherTest {

    private static final double CUBE = 0.5;
    private static final List<String> CHUTE = List.of("chute-far", "chute-left", "chute-right", "chute-near");

    private static Verdict ask(String design, String... changes) throws IOException {
        return Nonsense.ask(new HangsTogether(), () -> Nonsense.changed(design, changes));
    }

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void theDemosDo(String design) throws IOException {
        assertThat(ask(design, "box.lever.throw: 14")).isEqualTo(Verdict.PASSES);
    }

    @Test
    void aPrintedPieceIsOne() throws IOException {
        Random random = new Random(31);
        int whole = 0;
        for (int i = 0; i < 24; i++) {
            String[] changes = new String[CHUTE.size()];
            for (int k = 0; k < changes.length; k++) {
                int usual = CHUTE.get(k).equals("chute-far") ? 7 : CHUTE.get(k).equals("chute-near") ? 9 : 8;
                int layer = random.nextInt(3) > 0 ? usual : 5 + random.nextInt(7);
                changes[k] = String.format(Locale.ROOT, "box.parts.%s.layer: %d", CHUTE.get(k), layer);
            }
            Subject subject = Nonsense.changed("heron", changes);
            boolean one = isOne(subject.assembly().parts().stream()
                    .filter(part -> "chute".equals(part.printed()))
                    .toList());
            List<Finding> findings = new HangsTogether().ask(subject);
            assertThat(findings.stream().anyMatch(finding -> finding.about().equals("printed-chute")))
                    .as(Arrays.toString(changes))
                    .isEqualTo(!one);
            whole += one ? 1 : 0;
        }
        assertThat(whole).isBetween(3, 21);
    }

    /** Fills the piece from its first cube on, and looks whether all of it is filled. */
    private static boolean isOne(List<Part> parts) {
        List<boolean[][]> cubes = new ArrayList<>();
        double minX = parts.stream()
                .mapToDouble(part -> part.drawn().bounds().minX())
                .min()
                .orElseThrow();
        double minY = parts.stream()
                .mapToDouble(part -> part.drawn().bounds().minY())
                .min()
                .orElseThrow();
        for (Part part : parts) {
            Outline outline = part.outline();
            boolean[][] of = new boolean[400][400];
            Bounds bounds = outline.bounds();
            for (int x = 0; x < 400; x++) {
                for (int y = 0; y < 400; y++) {
                    Point at = new Point(minX + (x + 0.5) * CUBE, minY + (y + 0.5) * CUBE);
                    of[x][y] = at.x() > bounds.minX()
                            && at.x() < bounds.maxX()
                            && at.y() > bounds.minY()
                            && at.y() < bounds.maxY()
                            && outline.contains(at);
                }
            }
            cubes.add(of);
        }
        boolean[] reached = new boolean[parts.size()];
        Deque<Integer> next = new ArrayDeque<>(List.of(0));
        reached[0] = true;
        while (!next.isEmpty()) {
            int from = next.poll();
            for (int to = 0; to < parts.size(); to++) {
                if (!reached[to] && meet(parts, cubes, from, to)) {
                    reached[to] = true;
                    next.add(to);
                }
            }
        }
        for (boolean one : reached) {
            if (!one) {
                return false;
            }
        }
        return true;
    }

    private static boolean meet(List<Part> parts, List<boolean[][]> cubes, int a, int b) {
        int apart = parts.get(b).layer() - parts.get(a).layer();
        Part behind = parts.get(apart > 0 ? a : b);
        boolean reaches = parts.stream()
                .filter(part -> part.layer() == behind.layer())
                .noneMatch(part -> part.thickness().value() > behind.thickness().value());
        int shared = 0;
        for (int x = 1; x < 399; x++) {
            for (int y = 1; y < 399; y++) {
                if (cubes.get(a)[x][y]) {
                    boolean on = cubes.get(b)[x][y];
                    boolean beside = cubes.get(b)[x - 1][y]
                            || cubes.get(b)[x + 1][y]
                            || cubes.get(b)[x][y - 1]
                            || cubes.get(b)[x][y + 1];
                    shared += on || (apart == 0 && beside) ? 1 : 0;
                }
            }
        }
        return shared > 3 && (apart == 0 || Math.abs(apart) == 1 && reaches);
    }

    /** A wing on a layer that nothing lies next to is held by its dowels; without them by nothing. */
    @Test
    void aBodyIsHeldByFacesOrDowels() throws IOException {
        assertThat(ask("heron", "figure.pins.wing-dowel-1.parts: [body, wing-far]"))
                .isEqualTo(Verdict.PASSES);
        assertThat(ask(
                        "heron",
                        "figure.pins.wing-dowel-1.parts: [body, wing-far]",
                        "figure.pins.wing-dowel-2.parts: [body, wing-far]"))
                .isEqualTo(Verdict.FAILS);
        assertThat(ask(
                        "heron",
                        "figure.pins.wing-dowel-1.parts: [body, wing-far]",
                        "figure.pins.wing-dowel-2.parts: [body, wing-far]",
                        "figure.parts.wing-near.layer: 4"))
                .isEqualTo(Verdict.PASSES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lever", "front", "kicker", "bucket-core"})
    void partsOfTwoBodiesAreNotPrintedInOne(String part) {
        boolean fixed = part.equals("front");
        org.assertj.core.api.ThrowableAssert.ThrowingCallable reading =
                () -> Nonsense.changed("heron", "box.parts." + part + ".printed: chute");
        if (fixed) {
            Assertions.assertThatCode(reading).doesNotThrowAnyException();
        } else {
            Assertions.assertThatThrownBy(reading)
                    .isInstanceOf(jackwork.design.DesignException.class)
                    .hasMessageContaining("design.yaml:")
                    .hasMessageContaining("read \"chute\"")
                    .hasMessageContaining("are not one body");
        }
    }
}
