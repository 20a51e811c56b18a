package jackwork.design;

import java.util.List;
import java.util.Map;

/** {@code box.yaml}: a money box with its lever and coin works, for any figure that fits its mounts. */
@About("A box: its parts, lever, coin works, and the mounts for a figure.")
public record BoxFile(
        int format,
        String name,
        String drawing,
        Map<String, PartEntry> parts,
        List<String> fixed,
        List<List<String>> glued,
        Map<String, PinEntry> pins,
        Map<String, SlideEntry> slides,
        Map<String, StopEntry> stops,
        Map<String, WeightEntry> weights,
        Map<String, MountEntry> mounts,
        LeverEntry lever,
        CoinWorksEntry coinWorks)
        implements Works {}
