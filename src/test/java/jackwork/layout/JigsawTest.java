package jackwork.layout;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rectangle cut at random can be laid together again: the one layout whose best length is known. */
class JigsawTest {

    private static final double LENGTH = 300;
    private static final double WIDTH = 200;
    private static final double CLOSE = LENGTH * 1.05;
    /** About three seconds on one core. */
    private static final long MOVES = 25_000;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void tenPiecesAsCutComeWithinAFewPerCent(long seed) {
        assertThat(laid(cut(new Random(seed), 10, List.of(0.0)), seed)).isLessThan(CLOSE);
    }

    /** Where the right turns are one in thousands nothing but the whole puzzle is better, and not all are found in time. */
    @Test
    void sixPiecesTurnedByQuartersMostlyDo() {
        int solved = 0;
        for (long seed = 1; seed <= 6; seed++) {
            List<Piece> pieces = cut(new Random(seed), 6, List.of(0.0, 90.0, 180.0, 270.0));
            solved += laid(pieces, seed) < CLOSE ? 1 : 0;
        }
        assertThat(solved).isGreaterThanOrEqualTo(4);
    }

    private static double laid(List<Piece> pieces, long seed) {
        LayoutResult result = Layouts.onStrip(pieces, WIDTH, Effort.moves(MOVES, seed));
        Judged.valid(pieces, result, LENGTH * 10, WIDTH);
        assertThat(result.length()).isGreaterThan(LENGTH * (1 - 1e-5));
        return result.length();
    }

    /** Cuts straight through the largest piece until there are enough, then turns and shuffles them. */
    private static List<Piece> cut(Random random, int count, List<Double> turns) {
        List<List<Point>> parts = new ArrayList<>();
        parts.add(Outline.rectangle(0, 0, LENGTH, WIDTH).outer());
        while (parts.size() < count) {
            parts.sort(Comparator.comparingDouble(part -> -area(part)));
            List<Point> largest = parts.get(0);
            Point centre = Outline.of(largest).centroid();
            double angle = random.nextDouble() * Math.PI;
            Point across = new Point(Math.cos(angle), Math.sin(angle));
            double off = across.dot(centre) + (random.nextDouble() - 0.5) * 0.3 * Math.sqrt(area(largest));
            List<Point> one = below(largest, across, off);
            List<Point> other = below(largest, across.times(-1), -off);
            if (Math.min(area(one), area(other)) > 0.25 * area(largest)) {
                parts.set(0, one);
                parts.add(other);
            }
        }
        Collections.shuffle(parts, random);
        List<Piece> pieces = new ArrayList<>();
        for (List<Point> part : parts) {
            double turn = Math.toRadians(turns.get(random.nextInt(turns.size())));
            pieces.add(new Piece("part " + pieces.size(), Outline.of(part).moved(new Pose(0, 0, turn)), turns));
        }
        return pieces;
    }

    private static double area(List<Point> ring) {
        return ring.size() < 3 ? 0 : Outline.of(ring).area();
    }

    /** What of a convex ring lies below a line. */
    private static List<Point> below(List<Point> ring, Point across, double off) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i);
            Point to = ring.get((i + 1) % ring.size());
            double a = across.dot(from) - off;
            double b = across.dot(to) - off;
            if (a <= 0) {
                kept.add(from);
            }
            if (a * b < 0) {
                kept.add(from.plus(to.minus(from).times(a / (a - b))));
            }
        }
        return kept;
    }
}
