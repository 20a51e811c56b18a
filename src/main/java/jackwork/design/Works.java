package jackwork.design;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    Map<String, LimitEntry> limits();

    Map<String, GearEntry> gears();

    Map<String, MeshEntry> meshes();

    Map<String, RackEntry> racks();

    Map<String, CamEntry> cams();

    Map<String, PawlEntry> pawls();

    Map<String, StringEntry> strings();

    Map<String, TouchEntry> touches();

    Map<String, SpringEntry> springs();

    Map<String, TorqueEntry> torques();

    Map<String, WeightEntry> weights();

    Map<String, MountEntry> mounts();

    /** By the part that they go on. */
    Map<String, PictureEntry> pictures();

    /** Parts whose whole outline is made from their teeth or their motion, not drawn. */
    static Set<String> madeOutlines(Works works) {
        Set<String> made = new LinkedHashSet<>();
        works.gears().values().stream()
                .filter(gear -> !Boolean.TRUE.equals(gear.inside()))
                .forEach(gear -> made.add(gear.part()));
        works.cams().values().forEach(cam -> made.add(cam.part()));
        works.pawls().values().forEach(pawl -> made.add(pawl.wheel()));
        return made;
    }
}
