package jackwork.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LayoutsTest {

    private static final List<Double> FREE = List.of();

    @Test
    void smallPartsLieInTheHoleOfALargeOne() {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece("frame", frame(100, 60), List.of(0.0, 90.0)));
        for (int k = 0; k < 4; k++) {
            pieces.add(new Piece("block " + k, Outline.rectangle(0, 0, 26, 26), FREE));
        }
        LayoutResult result = Layouts.onSheets(pieces, 105, 105, Effort.moves(5_000, 1));
        Judged.valid(pieces, result, 105, 105);
        assertThat(result.sheets()).isEqualTo(1);
        // Nowhere else is room for them.
        assertThat(result.length()).isBetween(99.999, 101.0);
    }

    @Test
    void partsFreeToTurnFillSeveralSheets() {
        List<Piece> pieces = mixed(40, 7);
        LayoutResult result = Layouts.onSheets(pieces, 160, 120, Effort.moves(3_000, 3));
        Judged.valid(pieces, result, 160, 120);
        double area =
                pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
        double used = ((result.sheets() - 1) * 160 + result.length()) * 120;
        assertThat(result.sheets()).isGreaterThan(1);
        assertThat(area / used).isBetween(0.6, 1.0);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void ofAnySeedNothingOverlaps(long seed) {
        List<Piece> pieces = mixed(24, seed);
        Judged.valid(pieces, Layouts.onSheets(pieces, 130, 90, Effort.moves(400, seed)), 130, 90);
    }

    @Test
    void framesOfOneCentreMeetWhereTheirBandsDo() {
        Lying large = new Lying(new Shape(new Piece("large", frame(100, 60), List.of(0.0))));
        Lying within = new Lying(new Shape(new Piece("within its band", frame(80, 40), List.of(0.0))));
        Lying small = new Lying(new Shape(new Piece("in its opening", frame(59, 20), List.of(0.0))));
        Lying solid = new Lying(new Shape(new Piece("over its opening", Outline.rectangle(0, 0, 80, 80), FREE)));
        assertThat(large.meets(within)).isTrue();
        assertThat(within.meets(large)).isTrue();
        assertThat(large.meets(solid)).isTrue();
        assertThat(solid.meets(large)).isTrue();
        assertThat(large.meets(small)).isFalse();
        assertThat(small.meets(large)).isFalse();
        assertThat(within.meets(small)).isTrue();
    }

    /** A sliver is too thin for any circle to be found in it. */
    @Test
    void piecesMeetWhereTheirAreasDo() {
        Random random = new Random(31);
        List<Piece> pieces = new ArrayList<>(mixed(12, 6));
        Outline sliver =
                Outline.of(List.of(new Point(0, 0), new Point(31, 41), new Point(60, 1), new Point(31, 40.9999)));
        pieces.add(new Piece("sliver", sliver, FREE));
        assertThat(new Shape(pieces.get(12)).inscribed).isZero();
        List<Lying> lying =
                pieces.stream().map(piece -> new Lying(new Shape(piece))).toList();
        int meet = 0;
        int apart = 0;
        for (int trial = 0; trial < 4_000; trial++) {
            int i = random.nextInt(13);
            int j = random.nextInt(13);
            Area one = putAnywhere(lying.get(i), pieces.get(i), random);
            if (i == j) {
                continue;
            }
            Area other = putAnywhere(lying.get(j), pieces.get(j), random);
            double shared = Judged.shared(one, other);
            boolean meets = lying.get(i).meets(lying.get(j));
            if (shared > 1e-3) {
                meet++;
                assertThat(meets).as("%s on %s", pieces.get(i), pieces.get(j)).isTrue();
            } else if (shared == 0) {
                apart++;
                assertThat(meets).as("%s on %s", pieces.get(i), pieces.get(j)).isFalse();
            }
        }
        assertThat(meet).isGreaterThan(1_000);
        assertThat(apart).isGreaterThan(500);
    }

    private static Area putAnywhere(Lying lying, Piece piece, Random random) {
        double[] turns = lying.shape.turns;
        double angle = turns.length > 0 ? turns[random.nextInt(turns.length)] : 6 * random.nextDouble();
        lying.place(60 * random.nextDouble(), 60 * random.nextDouble(), angle);
        Point turned = lying.shape.centre.turned(angle);
        return Judged.area(piece, new Placed(0, 0, new Pose(lying.x - turned.x(), lying.y - turned.y(), angle)));
    }

    @Test
    void theSameSeedAndMovesGiveTheSameLayout() {
        List<Piece> pieces = mixed(15, 2);
        LayoutResult one = Layouts.onSheets(pieces, 120, 100, Effort.moves(800, 5));
        LayoutResult again = Layouts.onSheets(pieces, 120, 100, Effort.moves(800, 5));
        assertThat(again).isEqualTo(one);
        assertThat(Layouts.onSheets(pieces, 120, 100, Effort.moves(800, 6))).isNotEqualTo(one);
    }

    @Test
    void moreMovesLayThemCloserAndEveryLayoutToldOfIsBetter() {
        List<Piece> pieces = mixed(20, 4);
        List<LayoutResult> told = new ArrayList<>();
        Effort effort = new Effort(3_000, Long.MAX_VALUE / 2 + System.nanoTime(), 1, 1, () -> false, told::add);
        LayoutResult result = Layouts.onStrip(pieces, 100, effort);
        assertThat(told).hasSizeGreaterThan(3).last().isEqualTo(result);
        for (int k = 1; k < told.size(); k++) {
            assertThat(told.get(k).length()).isLessThan(told.get(k - 1).length());
            Judged.valid(pieces, told.get(k), 1e4, 100);
        }
        assertThat(result.length()).isLessThan(0.9 * told.get(0).length());
    }

    @Test
    void twoThreadsShareTheirBest() {
        List<Piece> pieces = mixed(20, 9);
        LayoutResult result = Layouts.onStrip(pieces, 100, Effort.seconds(2, 2, 1));
        Judged.valid(pieces, result, 1e4, 100);
        double area =
                pieces.stream().mapToDouble(piece -> piece.outline().area()).sum();
        assertThat(area / (100 * result.length())).isBetween(0.6, 1.0);
    }

    @Test
    void stopsAtOnceWithAValidLayout() {
        List<Piece> pieces = mixed(40, 8);
        AtomicInteger asked = new AtomicInteger();
        Effort stopped = new Effort(
                Long.MAX_VALUE,
                System.nanoTime() + 3_600_000_000_000L,
                2,
                1,
                () -> asked.incrementAndGet() > 0,
                result -> {});
        LayoutResult result = Layouts.onSheets(pieces, 160, 120, stopped);
        Judged.valid(pieces, result, 160, 120);
        // Each of the two threads asks once before each of its two halves.
        assertThat(asked.get()).isBetween(1, 4);
        Judged.valid(pieces, Layouts.onSheets(pieces, 160, 120, Effort.seconds(0, 1, 1)), 160, 120);
        Judged.valid(pieces, Layouts.onSheets(pieces, 160, 120, Effort.moves(0, 1)), 160, 120);
    }

    @Test
    void aPieceTooLargeIsNamedWithItsSizeAndTheSheets() {
        Piece beam = new Piece("beam", Outline.rectangle(0, 0, 250, 20), List.of(0.0));
        assertThatThrownBy(() -> Layouts.onSheets(List.of(beam), 200, 200, Effort.moves(10, 1)))
                .isInstanceOfSatisfying(
                        PieceTooLargeException.class, e -> assertThat(e.piece()).isEqualTo(beam))
                .hasMessageContaining("beam is 250.0 x 20.0 mm")
                .hasMessageContaining("200.0 x 200.0 mm");
        // Across the sheet it would fit.
        Piece free = new Piece("beam", beam.outline(), FREE);
        assertThat(Layouts.onSheets(List.of(free), 200, 200, Effort.moves(10, 1))
                        .sheets())
                .isEqualTo(1);
    }

    @Test
    void noPiecesNeedNoSheet() {
        assertThat(Layouts.onSheets(List.of(), 100, 100, Effort.moves(10, 1)))
                .isEqualTo(new LayoutResult(0, 0, List.of()));
        assertThat(Layouts.onStrip(List.of(), 100, Effort.seconds(1, 2, 1)).sheets())
                .isZero();
    }

    @Test
    void onePieceLiesAlong() {
        List<Piece> one = List.of(new Piece("bar", Outline.rectangle(0, 0, 80, 20), List.of(0.0, 90.0)));
        LayoutResult result = Layouts.onStrip(one, 100, Effort.moves(200, 1));
        Judged.valid(one, result, 1e3, 100);
        assertThat(result.length()).isBetween(19.999, 20.001);
    }

    private static Outline frame(double side, double opening) {
        double from = (side - opening) / 2;
        return Outline.rectangle(0, 0, side, side)
                .without(Outline.rectangle(from, from, from + opening, from + opening));
    }

    /** Levers, discs, rings and angles of many sizes, free to turn or by quarters. */
    private static List<Piece> mixed(int count, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double size = 15 + 30 * random.nextDouble();
            Outline outline = switch (k % 4) {
                case 0 ->
                    Outline.of(List.of(new Point(0, 0), new Point(size, 4), new Point(size + 3, 10), new Point(2, 12)));
                case 1 -> Outline.disc(new Circle(new Point(5, 5), size / 3), 0.3);
                case 2 -> frame(size, 0.7 * size);
                default ->
                    Outline.of(List.of(
                            new Point(0, 0),
                            new Point(size, 0),
                            new Point(size, size / 4),
                            new Point(size / 4, size / 4),
                            new Point(size / 4, size),
                            new Point(0, size)));
            };
            pieces.add(new Piece("piece " + k, outline, k % 3 == 0 ? FREE : List.of(0.0, 90.0, 180.0, 270.0)));
        }
        return pieces;
    }
}
