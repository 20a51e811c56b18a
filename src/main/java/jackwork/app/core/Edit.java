package jackwork.app.core;

import jackwork.app.wire.Payload;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * What somebody at the page wants changed.
 *
 * @param base version of the files that it was decided on
 * @param label what it is, in a few words: for taking it back
 */
public record Edit(String base, String label, List<Step> steps) implements Payload {

    public enum Kind {
        /** A number or a place: kept in the design's {@code change}. */
        SET,
        /** A new entry of the box's or the figure's own file. */
        ADD,
        /** An entry, and whatever cannot be without it. */
        REMOVE,
        /** An entry, wherever it is named; its other name is the value. */
        RENAME
    }

    /**
     * @param path {@code figure.weights.tail.mass}
     * @param value a number, words, yes or no, a place (two numbers, mm in the common frame), a list or named fields of
     *     these; words are taken as they are typed, {@code 0.5 in} too; nothing when something is removed
     */
    public record Step(Kind kind, String path, JsonNode value) {}
}
