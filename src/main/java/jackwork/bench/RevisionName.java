package jackwork.bench;

/**
 * @param design its folder in the workshop: {@code heron}
 * @param number counted from 1 for each design
 */
public record RevisionName(String design, int number) {

    public RevisionName {
        Texts.require("design", design, 1, 200);
        Texts.requireInside("design", design);
        Texts.require("revision", number, 1, 1_000_000);
    }

    /** Where an archive keeps its files, below those of revisions. */
    String folder() {
        return design + "/revision-" + number;
    }

    /** As people say it. */
    @Override
    public String toString() {
        return design + ", revision " + number;
    }
}
