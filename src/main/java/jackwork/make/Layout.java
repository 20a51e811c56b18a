package jackwork.make;

import jackwork.design.Named;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Bounds;
import jackwork.geometry.Pose;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays parts out on sheets by their extents, in rows, tallest first, keeping the direction of the
 * grain as drawn. Each row opens on the first sheet with room.
 */
final class Layout {

    /** A row of parts on a sheet: its base, height and how far it is filled. */
    private static final class Row {
        final double base;
        final double height;
        double filled;

        Row(double base, double height, double filled) {
            this.base = base;
            this.height = height;
            this.filled = filled;
        }
    }

    private static final class Sheet {
        final List<Row> rows = new ArrayList<>();
        final List<Placement> placements = new ArrayList<>();
        double top;
    }

    private final double width;
    private final double height;
    private final double margin;
    private final double gap;
    private final List<Sheet> sheets = new ArrayList<>();

    private Layout(double width, double height, double margin, double gap) {
        this.width = width;
        this.height = height;
        this.margin = margin;
        this.gap = gap;
    }

    /**
     * @param quantity copies of every part
     * @throws PartTooLargeException when a part does not fit its sheet or the laser's bed
     */
    static List<SheetLayout> of(List<FlatPiece> pieces, WorkshopFile workshop, int quantity) {
        Map<String, List<FlatPiece>> byStock = new LinkedHashMap<>();
        pieces.forEach(part ->
                byStock.computeIfAbsent(part.stock(), k -> new ArrayList<>()).add(part));
        List<SheetLayout> result = new ArrayList<>();
        byStock.forEach((stock, members) -> {
            double[] usable = usable(workshop, stock);
            Layout layout = new Layout(
                    usable[0],
                    usable[1],
                    workshop.laser().margin(),
                    workshop.laser().gap());
            members.stream()
                    .sorted(Comparator.comparingDouble(
                            (FlatPiece part) -> -part.drawn().bounds().height()))
                    .forEach(part -> layout.place(part, quantity));
            for (int i = 0; i < layout.sheets.size(); i++) {
                result.add(new SheetLayout(
                        stock, i + 1, usable[0], usable[1], List.copyOf(layout.sheets.get(i).placements)));
            }
        });
        return result;
    }

    /** Width and height that can be cut of a stock: the sheet, but no more than the laser's bed. */
    static double[] usable(WorkshopFile workshop, String stock) {
        List<Double> size = Named.in(workshop.sheets(), stock).size();
        List<Double> bed = workshop.laser().bed();
        return new double[] {Math.min(size.get(0), bed.get(0)), Math.min(size.get(1), bed.get(1))};
    }

    private void place(FlatPiece part, int quantity) {
        Bounds bounds = part.drawn().bounds();
        if (bounds.width() > width - 2 * margin || bounds.height() > height - 2 * margin) {
            throw new PartTooLargeException(part.name(), bounds, width - 2 * margin, height - 2 * margin);
        }
        for (int copy = 1; copy <= quantity; copy++) {
            String name = quantity == 1 ? part.name() : part.name() + "-" + copy;
            int index = 0;
            while (!tryPlace(sheet(index), part, name, bounds)) {
                index++;
            }
        }
    }

    private Sheet sheet(int index) {
        while (sheets.size() <= index) {
            Sheet sheet = new Sheet();
            sheet.top = margin;
            sheets.add(sheet);
        }
        return sheets.get(index);
    }

    private boolean tryPlace(Sheet sheet, FlatPiece part, String name, Bounds bounds) {
        for (Row row : sheet.rows) {
            if (bounds.height() <= row.height && row.filled + bounds.width() <= width - margin) {
                put(sheet, row, part, name, bounds);
                return true;
            }
        }
        if (sheet.top + bounds.height() <= height - margin) {
            Row row = new Row(sheet.top, bounds.height(), margin);
            sheet.rows.add(row);
            sheet.top += bounds.height() + gap;
            put(sheet, row, part, name, bounds);
            return true;
        }
        return false;
    }

    private void put(Sheet sheet, Row row, FlatPiece part, String name, Bounds bounds) {
        Pose shift = new Pose(row.filled - bounds.minX(), row.base - bounds.minY(), 0);
        sheet.placements.add(new Placement(part, name, shift));
        row.filled += bounds.width() + gap;
    }
}
