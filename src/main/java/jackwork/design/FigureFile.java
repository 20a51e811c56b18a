package jackwork.design;

import java.util.Map;

/** {@code figure.yaml}: a figure. Of the box it may name {@code box} (the ground) and the lever. */
@About("A figure: its parts and joints, and the mounts that hold it to a box.")
public record FigureFile(
        @About("Of this file's format.") int format,
        @Inline Works works,
        @About("Clothes, by name.") Map<String, ClothEntry> cloths) {}
