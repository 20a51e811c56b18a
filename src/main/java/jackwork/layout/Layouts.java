package jackwork.layout;

import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;

/** Lays pieces out on as few sheets as can be, the last one used as little as can be; or on one endless strip. */
public final class Layouts {

    private static final int FIRST_TRIALS = 300;

    private final List<Piece> pieces;
    private final List<Shape> shapes;
    private final Room room;

    private Layouts(List<Piece> pieces, Room room) {
        this.pieces = pieces;
        // Copies of one piece share their shape.
        IdentityHashMap<Piece, Shape> known = new IdentityHashMap<>();
        this.shapes = pieces.stream()
                .map(piece -> known.computeIfAbsent(piece, Shape::new))
                .toList();
        this.room = room;
    }

    /**
     * @param length of a sheet, mm, along x
     * @param width of a sheet, mm, along y
     * @throws PieceTooLargeException when a piece fits no sheet
     */
    public static LayoutResult onSheets(List<Piece> pieces, double length, double width, Effort effort) {
        return new Layouts(pieces, new Room(length, width)).search(effort);
    }

    /**
     * @param width of the strip, mm
     * @throws PieceTooLargeException when a piece is wider than the strip
     */
    public static LayoutResult onStrip(List<Piece> pieces, double width, Effort effort) {
        double enough = 1;
        for (Piece piece : pieces) {
            enough += Math.hypot(
                    piece.outline().bounds().width(), piece.outline().bounds().height());
        }
        return new Layouts(pieces, new Room(enough, width)).search(effort);
    }

    private LayoutResult search(Effort effort) {
        if (pieces.isEmpty()) {
            return new LayoutResult(0, 0, List.of());
        }
        Search.Found first = construct(new SplittableRandom(effort.seed()));
        Best best = new Best(first);
        effort.progress().accept(result(first));
        List<Thread> helpers = new ArrayList<>();
        for (int k = 1; k < effort.threads(); k++) {
            Search search = new Search(room, shapes, effort, effort.seed() + k, best, found -> tell(effort, found));
            Thread helper = new Thread(search::run, "layout-" + k);
            helper.setDaemon(true);
            helper.start();
            helpers.add(helper);
        }
        new Search(room, shapes, effort, effort.seed(), best, found -> tell(effort, found)).run();
        for (Thread helper : helpers) {
            try {
                helper.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
        return result(best.get());
    }

    private void tell(Effort effort, Search.Found found) {
        effort.progress().accept(result(found));
    }

    private LayoutResult result(Search.Found found) {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            double[] p = found.places();
            int sheet = (int) p[4 * i + 3];
            // The search places centres; a pose turns about the piece's own origin.
            Point turned = shapes.get(i).centre.turned(p[4 * i + 2]);
            placed.add(new Placed(
                    i,
                    sheet,
                    new Pose(p[4 * i] - room.start(sheet) - turned.x(), p[4 * i + 1] - turned.y(), p[4 * i + 2])));
        }
        return new LayoutResult(found.sheets(), found.length(), List.copyOf(placed));
    }

    /** Largest first, each as far left and low as trials find room for it, on the first sheet that has any. */
    private Search.Found construct(SplittableRandom random) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> -shapes.get(i).area * shapes.get(i).reach));
        double[] places = new double[4 * pieces.size()];
        List<Lying> lying = new ArrayList<>();
        List<Integer> sheetOf = new ArrayList<>();
        int sheets = 1;
        double[] used = new double[pieces.size() + 1];
        for (int i : order) {
            if (Thread.currentThread().isInterrupted()) {
                throw new CancellationException("stopped before the first layout");
            }
            Lying piece = new Lying(shapes.get(i));
            double fits = shapes.get(i).narrowest(room.width());
            if (Double.isNaN(fits) || new Turned(shapes.get(i), fits).width() > room.length()) {
                throw new PieceTooLargeException(pieces.get(i), room.length(), room.width());
            }
            piece.turn(fits);
            int sheet = 0;
            while (!placed(piece, sheet, lying, sheetOf, used[sheet], random)) {
                sheet++;
            }
            sheets = Math.max(sheets, sheet + 1);
            used[sheet] = Math.max(used[sheet], piece.maxX - room.start(sheet));
            lying.add(piece);
            sheetOf.add(sheet);
            places[4 * i] = piece.x;
            places[4 * i + 1] = piece.y;
            places[4 * i + 2] = piece.angle();
            places[4 * i + 3] = sheet;
        }
        return new Search.Found(sheets, used[sheets - 1], places);
    }

    private boolean placed(
            Lying piece, int sheet, List<Lying> lying, List<Integer> sheetOf, double used, SplittableRandom random) {
        double fits = piece.angle();
        double start = room.start(sheet);
        double best = Double.POSITIVE_INFINITY;
        double[] at = new double[3];
        for (int trial = 0; trial < FIRST_TRIALS; trial++) {
            double[] turns = piece.shape.turns;
            piece.turn(turns.length > 0 ? turns[random.nextInt(turns.length)] : fits + random.nextInt(4) * Math.PI / 2);
            double freeX = Math.min(room.length(), used + piece.maxX - piece.minX) - (piece.maxX - piece.minX);
            double freeY = room.width() - (piece.maxY - piece.minY);
            if (freeX < 0 || freeY < 0) {
                continue;
            }
            double left = start - piece.minX;
            double low = -piece.minY;
            piece.move(left + random.nextDouble() * freeX, low + random.nextDouble() * freeY);
            if (free(piece, sheet, lying, sheetOf)) {
                slide(piece, sheet, lying, sheetOf, left, low);
                double cost = piece.maxX + 0.01 * piece.maxY;
                if (cost < best) {
                    best = cost;
                    at = new double[] {piece.x, piece.y, piece.angle()};
                }
            }
        }
        if (Double.isInfinite(best)) {
            piece.turn(fits);
            double beyond = start + used - piece.minX;
            piece.move(beyond, -piece.minY);
            return piece.maxX <= start + room.length();
        }
        piece.place(at[0], at[1], at[2]);
        return true;
    }

    private static void slide(
            Lying piece, int sheet, List<Lying> lying, List<Integer> sheetOf, double left, double low) {
        for (double step = piece.shape.reach; step > 1e-3 * piece.shape.reach; step /= 2) {
            for (int axis = 0; axis < 2; axis++) {
                double x = piece.x;
                double y = piece.y;
                piece.move(axis == 0 ? Math.max(left, x - step) : x, axis == 1 ? Math.max(low, y - step) : y);
                if (!free(piece, sheet, lying, sheetOf)) {
                    piece.move(x, y);
                }
            }
        }
    }

    private static boolean free(Lying piece, int sheet, List<Lying> lying, List<Integer> sheetOf) {
        for (int j = 0; j < lying.size(); j++) {
            if (sheetOf.get(j) == sheet
                    && (piece.meets(lying.get(j)) || lying.get(j).meets(piece))) {
                return false;
            }
        }
        return true;
    }
}
