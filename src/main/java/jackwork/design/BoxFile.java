package jackwork.design;

import org.jspecify.annotations.Nullable;

/** {@code box.yaml}: a money box with its lever and coin works, for any figure that fits its mounts. */
@About("A box: its parts, lever, coin works, and the mounts for a figure.")
public record BoxFile(
        @About("Of this file's format.") int format,
        @Inline Works works,
        @About("What the finger presses.") LeverEntry lever,
        @About("Slot, bucket, catch and kicker.") CoinWorksEntry coinWorks,

        @About("The case around it; when left out, works and figure alone are made.") @Key("case") @Nullable
        CaseEntry housing) {}
