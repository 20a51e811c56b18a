package jackwork.design;

import java.util.List;
import java.util.Map;

/** What box and figure have in common: parts and how they are held. Maps keep the order of the file. */
public sealed interface Works permits BoxFile, FigureFile {

    /** The SVG beside the file. */
    String drawing();

    Map<String, PartEntry> parts();

    /** Parts that never move: they are the ground, called {@code box} in joints. */
    List<String> fixed();

    /** Groups of parts glued into one body. */
    List<List<String>> glued();

    Map<String, PinEntry> pins();

    Map<String, SlideEntry> slides();

    Map<String, StopEntry> stops();

    Map<String, WeightEntry> weights();

    Map<String, MountEntry> mounts();
}
