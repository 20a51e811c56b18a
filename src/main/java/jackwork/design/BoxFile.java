package jackwork.design;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * {@code box.yaml}: a money box with its lever and coin works, for any figure that fits its mounts.
 *
 * @param housing the case around it; when absent, works and figure alone are made
 */
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
        Map<String, LimitEntry> limits,
        Map<String, GearEntry> gears,
        Map<String, MeshEntry> meshes,
        Map<String, RackEntry> racks,
        Map<String, CamEntry> cams,
        Map<String, PawlEntry> pawls,
        Map<String, StringEntry> strings,
        Map<String, TouchEntry> touches,
        Map<String, SpringEntry> springs,
        Map<String, TorqueEntry> torques,
        Map<String, WeightEntry> weights,
        Map<String, MountEntry> mounts,
        Map<String, PictureEntry> pictures,
        LeverEntry lever,
        CoinWorksEntry coinWorks,
        @Key("case") @Nullable CaseEntry housing)
        implements Works {}
