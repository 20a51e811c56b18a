package jackwork.design;

/** The files that makers write. */
public enum FileKind {
    WORKSHOP(WorkshopFile.class),
    BOX(BoxFile.class),
    FIGURE(FigureFile.class),
    DESIGN(DesignFile.class);

    private final Class<? extends Record> record;

    FileKind(Class<? extends Record> record) {
        this.record = record;
    }

    /** What it is read into. */
    Class<? extends Record> record() {
        return record;
    }
}
