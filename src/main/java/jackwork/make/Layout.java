package jackwork.make;

import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Outline;
import jackwork.geometry.Pose;
import jackwork.layout.LayoutResult;
import jackwork.layout.Layouts;
import jackwork.layout.Piece;
import jackwork.layout.PieceTooLargeException;
import jackwork.layout.Placed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays pieces out on sheets, by their true outlines, those with a grain along it, the others at any angle; small ones in
 * the openings of large ones where there is room.
 */
final class Layout {

    /** Outlines are laid out by fewer points, which enclose the true ones and stand off them no more than this, mm. */
    private static final double ROUGH = 0.15;

    private Layout() {}

    /**
     * @param quantity copies of every piece
     * @throws PartTooLargeException when a piece does not fit its sheet or the laser's bed
     * @throws LaserException when the laser's gap or margin is below 0
     */
    static List<SheetLayout> of(List<FlatPiece> pieces, WorkshopFile workshop, int quantity, SheetSearch search) {
        Map<String, List<FlatPiece>> byStock = new LinkedHashMap<>();
        pieces.forEach(piece -> byStock.computeIfAbsent(piece.stock(), stock -> new ArrayList<>())
                .add(piece));
        List<SheetLayout> result = new ArrayList<>();
        byStock.forEach(
                (stock, members) -> result.addAll(of(stock, members, workshop, quantity, search, byStock.size())));
        return result;
    }

    private static List<SheetLayout> of(
            String stock,
            List<FlatPiece> members,
            WorkshopFile workshop,
            int quantity,
            SheetSearch search,
            int stocks) {
        List<FlatPiece> all = new ArrayList<>();
        List<String> names = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        LaserException.requireRoom(workshop.laser());
        double gap = workshop.laser().gap();
        for (FlatPiece member : members) {
            Outline kept = member.drawn().offset(gap / 2 + ROUGH).simplified(ROUGH);
            Piece piece = new Piece(member.name(), kept, turns(member));
            for (int copy = 1; copy <= quantity; copy++) {
                all.add(member);
                names.add(quantity == 1 ? member.name() : member.name() + "-" + copy);
                pieces.add(piece);
            }
        }
        double[] usable = usable(workshop, stock);
        // Each piece has half the gap around it already: so much of the margin is kept.
        double edge = workshop.laser().margin() - gap / 2 - ROUGH;
        LayoutResult laid;
        try {
            double length = usable[0] - 2 * edge;
            double width = usable[1] - 2 * edge;
            laid = LaidBefore.or(
                    pieces,
                    length,
                    width,
                    search,
                    stocks,
                    () -> Layouts.onSheets(pieces, length, width, search.effort(stock, pieces.size(), stocks)));
        } catch (PieceTooLargeException e) {
            FlatPiece large = all.get(pieces.indexOf(e.piece()));
            double margin = 2 * workshop.laser().margin();
            throw new PartTooLargeException(
                    large.name(), large.drawn().bounds(), usable[0] - margin, usable[1] - margin);
        }
        List<List<Placement>> sheets = new ArrayList<>();
        for (int i = 0; i < laid.sheets(); i++) {
            sheets.add(new ArrayList<>());
        }
        for (Placed placed : laid.placed()) {
            Pose pose = new Pose(
                    placed.pose().x() + edge,
                    placed.pose().y() + edge,
                    placed.pose().angle());
            sheets.get(placed.sheet()).add(new Placement(all.get(placed.piece()), names.get(placed.piece()), pose));
        }
        List<SheetLayout> result = new ArrayList<>();
        for (List<Placement> sheet : sheets) {
            result.add(new SheetLayout(stock, result.size() + 1, usable[0], usable[1], List.copyOf(sheet)));
        }
        return result;
    }

    /** Degrees; none for any. */
    static List<Double> turns(FlatPiece piece) {
        return piece.grain() ? List.of(0.0, 180.0) : List.of();
    }

    /** Width and height that can be cut of a stock: the sheet, but no more than the laser's bed. */
    static double[] usable(WorkshopFile workshop, String stock) {
        List<Double> size = Named.in(workshop.sheets(), stock).size();
        List<Double> bed = workshop.laser().bed();
        return new double[] {Math.min(size.get(0), bed.get(0)), Math.min(size.get(1), bed.get(1))};
    }
}
