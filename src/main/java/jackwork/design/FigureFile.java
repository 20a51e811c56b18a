package jackwork.design;

import java.util.List;
import java.util.Map;

/** {@code figure.yaml}: a figure. Of the box it may name {@code box} (the ground) and the lever. */
@About("A figure: its parts and joints, and the mounts that hold it to a box.")
public record FigureFile(
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
        Map<String, ClothEntry> cloths)
        implements Works {}
