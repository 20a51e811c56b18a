package jackwork.design;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What box and figure have in common: parts and how they are held. Maps keep the order of the file. */
public record Works(
        @About("What it is called.") @Text String name,
        @About("The SVG beside the file.") @Text String drawing,
        @About("By name; an outline of the drawing each.") Map<String, PartEntry> parts,

        @About("Parts that never move: joints may call them all `box`.")
        @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        List<String> fixed,

        @About("Groups of parts glued into one body.") @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        List<List<String>> glued,

        @About("Rods through parts, by name.") Map<String, PinEntry> pins,
        @About("Pegs in slots, by name.") Map<String, SlideEntry> slides,
        @About("How far parts turn, by name.") Map<String, StopEntry> stops,
        @About("Toothed wheels, by name.") Map<String, GearEntry> gears,

        @About("All other joints: a section for each kind of the registry, then by name.") @Inline
        Map<String, Map<String, JointEntry>> joints,

        @About("Nuts, shot, lead, by name.") Map<String, WeightEntry> weights,
        @About("Holes that box and figure share, by name.") Map<String, MountEntry> mounts,

        @About("By the part that they go on.") @Names(value = NameKind.PART, whose = Names.Whose.OWN)
        Map<String, PictureEntry> pictures) {

    /** All joints of one kind, by name. */
    public <E extends JointEntry> Map<String, E> joints(Class<E> kind) {
        Map<String, E> found = new LinkedHashMap<>();
        joints.getOrDefault(JointKinds.of(kind).section(), Map.of())
                .forEach((name, entry) -> found.put(name, kind.cast(entry)));
        return found;
    }

    /** Parts whose whole outline is made from their teeth or their motion, not drawn; a ring's outer one is drawn. */
    public Set<String> madeOutlines() {
        Set<String> made = new LinkedHashSet<>();
        Walk.over(this, "", (path, entry, word, value) -> {
            if (value instanceof String part
                    && word.names().filter(Names::shapes).isPresent()) {
                made.add(part);
            }
        });
        gears.values().stream()
                .filter(gear -> Boolean.TRUE.equals(gear.inside()))
                .forEach(ring -> made.remove(ring.part()));
        return made;
    }
}
