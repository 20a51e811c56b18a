package jackwork.bench;

import jackwork.design.WorkshopSplice;
import jackwork.stock.Uncertain;
import java.util.List;

/** Sizes by calliper: of a sheet, of a rod, by the workshop's name for it. */
enum SizeForm implements Form {
    SHEET("sheet", "sheets", "thickness"),
    ROD("rod", "rods", "diameter");

    private final String kind;
    private final String list;
    private final String size;

    SizeForm(String kind, String list, String size) {
        this.kind = kind;
        this.list = list;
        this.size = size;
    }

    @Override
    public String kind() {
        return kind;
    }

    @Override
    public List<String> names() {
        return List.of("size", "step");
    }

    @Override
    public void check(Measured measured) {
        if (!measured.about().matches("[A-Za-z0-9_-]+")) {
            throw new IllegalArgumentException("read \"" + measured.about() + "\", expected the workshop's name of a "
                    + kind + ", as in workshop.yaml under " + list);
        }
        Forms.requireStep(measured);
        for (double value : measured.all("size")) {
            if (!(value > 0.1 && value < 100)) {
                throw new IllegalArgumentException("a size reads " + value + " mm, expected 0.1 to 100");
            }
        }
    }

    @Override
    public Uncertain of(List<Measured> same) {
        return Readings.of(
                Forms.all(same, "size"), Forms.coarsest(same, measured -> measured.one("step")), "mm", "calliper");
    }

    @Override
    public String place(String about) {
        return list + "." + about + "." + size;
    }

    @Override
    public String edit(String workshop, String about, Uncertain value) {
        return WorkshopSplice.measured(workshop, place(about), value);
    }
}
