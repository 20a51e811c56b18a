package jackwork.layout;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * All pieces at their places, with how deep each pair lies in each other and how much that counts. Pieces always stand
 * wholly on a sheet; they may overlap each other until the search is done.
 */
final class Scene {

    final Room room;
    final Lying[] pieces;
    final int[] sheetOf;
    final int sheets;
    /** Of the last sheet, as far as it may be used, mm. */
    double lastLength;

    /** How deep each pair lies in each other, 0 when apart; symmetric. */
    final double[][] overlap;

    final double[][] weight;
    final double tail;

    Scene(Room room, List<Shape> shapes, int sheets, double lastLength) {
        this.room = room;
        this.sheets = sheets;
        this.lastLength = lastLength;
        int count = shapes.size();
        pieces = new Lying[count];
        double most = 0;
        for (int i = 0; i < count; i++) {
            pieces[i] = new Lying(shapes.get(i));
            most = Math.max(most, shapes.get(i).reach);
        }
        tail = 0.02 * most;
        sheetOf = new int[count];
        overlap = new double[count][count];
        weight = new double[count][count];
        resetWeights();
    }

    void resetWeights() {
        for (double[] row : weight) {
            Arrays.fill(row, 1);
        }
    }

    double lengthOf(int sheet) {
        return sheet == sheets - 1 ? lastLength : room.length();
    }

    /** Where everything lies: x, y, angle, sheet of each. */
    double[] places() {
        double[] places = new double[4 * pieces.length];
        for (int i = 0; i < pieces.length; i++) {
            places[4 * i] = pieces[i].x;
            places[4 * i + 1] = pieces[i].y;
            places[4 * i + 2] = pieces[i].angle();
            places[4 * i + 3] = sheetOf[i];
        }
        return places;
    }

    /** Puts all back; whoever stands over a shortened sheet's end is drawn in, or put elsewhere by chance. */
    void restore(double[] places, SplittableRandom random) {
        for (int i = 0; i < pieces.length; i++) {
            sheetOf[i] = (int) places[4 * i + 3];
            pieces[i].place(places[4 * i], places[4 * i + 1], places[4 * i + 2]);
            if (sheetOf[i] >= sheets) {
                scatter(i, random);
            } else {
                drawIn(i, random);
            }
        }
        judgeAll();
    }

    /** As {@link #restore}, but whoever stands over any edge of its sheet is drawn in. */
    void restoreWithin(double[] places, SplittableRandom random) {
        for (int i = 0; i < pieces.length; i++) {
            sheetOf[i] = (int) places[4 * i + 3];
            Lying piece = pieces[i];
            piece.place(places[4 * i], places[4 * i + 1], places[4 * i + 2]);
            double start = room.start(sheetOf[i]);
            double freeX = lengthOf(sheetOf[i]) - (piece.maxX - piece.minX);
            double freeY = room.width() - (piece.maxY - piece.minY);
            if (freeX < 0 || freeY < 0) {
                scatter(i, random);
            } else {
                double x = Math.max(start, Math.min(start + freeX, piece.minX));
                double y = Math.max(0, Math.min(freeY, piece.minY));
                piece.move(piece.x + x - piece.minX, piece.y + y - piece.minY);
            }
        }
        judgeAll();
    }

    private void drawIn(int i, SplittableRandom random) {
        Lying piece = pieces[i];
        double start = room.start(sheetOf[i]);
        double over = piece.maxX - start - lengthOf(sheetOf[i]);
        if (over > 0) {
            if (piece.minX - over < start) {
                scatter(i, random);
            } else {
                piece.move(piece.x - over, piece.y);
            }
        }
    }

    /** Anywhere that it fits. */
    private void scatter(int i, SplittableRandom random) {
        Lying piece = pieces[i];
        for (int attempt = 0; attempt < 100; attempt++) {
            int sheet = random.nextInt(sheets);
            double[] turns = piece.shape.turns;
            piece.turn(turns.length > 0 ? turns[random.nextInt(turns.length)] : random.nextDouble(2 * Math.PI));
            double freeX = lengthOf(sheet) - (piece.maxX - piece.minX);
            double freeY = room.width() - (piece.maxY - piece.minY);
            if (freeX >= 0 && freeY >= 0) {
                piece.move(
                        room.start(sheet) - piece.minX + random.nextDouble() * freeX,
                        -piece.minY + random.nextDouble() * freeY);
                sheetOf[i] = sheet;
                return;
            }
        }
        // It hardly fits: as it is shortest, at the beginning of the first sheet.
        piece.turn(piece.shape.narrowest(room.width()));
        piece.move(room.start(0) - piece.minX, -piece.minY);
        sheetOf[i] = 0;
    }

    void judgeAll() {
        for (int i = 0; i < pieces.length; i++) {
            for (int j = 0; j < i; j++) {
                double deep =
                        pieces[i].meets(pieces[j]) ? pieces[i].depth(pieces[j], tail, Double.POSITIVE_INFINITY) : 0;
                overlap[i][j] = deep;
                overlap[j][i] = deep;
            }
        }
    }

    void judge(int i) {
        for (int j = 0; j < pieces.length; j++) {
            if (j != i) {
                boolean meet = i > j ? pieces[i].meets(pieces[j]) : pieces[j].meets(pieces[i]);
                double deep = meet ? pieces[i].depth(pieces[j], tail, Double.POSITIVE_INFINITY) : 0;
                overlap[i][j] = deep;
                overlap[j][i] = deep;
            }
        }
    }

    /** Weighted overlap of piece i if it lay like {@code trial}; stops counting beyond {@code bound}. */
    double cost(int i, Lying trial, double bound) {
        double sum = 0;
        double[] weights = weight[i];
        for (int j = 0; j < pieces.length; j++) {
            if (j != i) {
                Lying other = pieces[j];
                // The same one is drawn in by a hair as when the pair is judged.
                boolean meet = i > j ? trial.meets(other) : other.meets(trial);
                if (meet) {
                    sum += weights[j] * trial.depth(other, tail, (bound - sum) / weights[j]);
                    if (sum >= bound) {
                        return sum;
                    }
                }
            }
        }
        return sum;
    }

    double total() {
        double sum = 0;
        for (int i = 0; i < pieces.length; i++) {
            for (int j = 0; j < i; j++) {
                sum += overlap[i][j];
            }
        }
        return sum;
    }

    boolean overlaps(int i) {
        for (double deep : overlap[i]) {
            if (deep > 0) {
                return true;
            }
        }
        return false;
    }

    /** A pair that resists counts more, one that has come apart less. */
    void reweigh() {
        double most = 0;
        for (double[] row : overlap) {
            for (double deep : row) {
                most = Math.max(most, deep);
            }
        }
        for (int i = 0; i < pieces.length; i++) {
            for (int j = 0; j < pieces.length; j++) {
                double deep = overlap[i][j];
                weight[i][j] = deep > 0 ? weight[i][j] * (1.2 + 0.8 * deep / most) : Math.max(1, weight[i][j] * 0.95);
            }
        }
    }
}
