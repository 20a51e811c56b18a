package jackwork.design;

import java.util.Optional;

/** What a word can be the name of. */
enum NameKind {
    PART("a part", "parts"),
    PIN("a pin", "pins"),
    GEAR("a gear", "gears"),
    MOUNT("a mount", "mounts"),
    ROD("a rod of workshop.yaml", ""),
    SHEET("a sheet of workshop.yaml", ""),
    CORD("a cord of workshop.yaml", ""),
    SHEET_KIND("a sheet of the catalogue", ""),
    ROD_KIND("a rod of the catalogue", ""),
    FASTENER("a fastener of the catalogue", ""),
    COIN("a coin of the catalogue", ""),
    OUTLINE("the id of a closed outline in the drawing", ""),
    /** Whatever is on a shopping list; nothing refers to it. */
    GOODS("something that is bought", ""),
    OPERATION("an operation (`jackwork stock` lists them)", "");

    private final String words;
    private final String section;

    NameKind(String words, String section) {
        this.words = words;
        this.section = section;
    }

    /** As it is asked for: {@code expected a pin}. */
    String words() {
        return words;
    }

    /** The section of a box's or figure's file whose keys are such names; empty when other files or tables define them. */
    Optional<String> section() {
        return section.isEmpty() ? Optional.empty() : Optional.of(section);
    }

    /** What a section's keys are names of; nothing refers to those of the other sections. */
    static Optional<NameKind> ofSection(String section) {
        for (NameKind kind : values()) {
            if (!section.isEmpty() && kind.section.equals(section)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
