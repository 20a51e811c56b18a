package jackwork.design;

import java.util.List;
import java.util.Map;

/** {@code design.yaml}: a box with a figure on it. */
@About("A design: a box with a figure on it, the coins it takes and what the figure must do.")
public record DesignFile(
        @About("Of this file's format.") int format,
        @About("What it is called.") @Text String name,

        @About("The box's file, from this file's folder.") @Text
        String box,

        @About("The figure's file, likewise.") @Text String figure,

        @About("The coins it must take.") @Names(NameKind.COIN)
        List<String> coins,

        @About("What the figure must do.") Map<String, GestureEntry> gestures,

        @About("Numbers and places that differ from the box and figure files: `figure.weights.tail.count: 2`.")
        Map<String, Object> change,

        @About("What is set at the bench until the piece runs; builds count how many run at once, and how many then.")
        Map<String, AdjusterEntry> adjusters) {}
