package jackwork.bench;

/**
 * @param design its folder in the workshop: {@code heron}
 * @param number counted from 1 for each design
 */
public record RevisionName(String design, int number) {

    public RevisionName {
        Texts.require("design", design, 1, 200);
        Texts.require("revision", number, 1, 1_000_000);
    }

    @Override
    public String toString() {
        return design + "@" + number;
    }
}
