package jackwork.design;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A part's outline is made from one entry alone: a gear's teeth, a cam's motion, a ratchet. Several pawls may run on one
 * ratchet when all say the same of it.
 */
final class ShapedOnce {

    /** @param entry name of the gear, cam or pawl */
    private record Shaped(String path, String entry) {}

    private ShapedOnce() {}

    static void check(Works works, Around around) {
        Map<String, Shaped> shapedBy = new LinkedHashMap<>();
        Walk.over(works, "", (path, entry, word, value) -> {
            if (!(value instanceof String part)
                    || word.names().filter(Names::shapes).isEmpty()) {
                return;
            }
            String of = path.substring(0, path.lastIndexOf('.'));
            GearEntry gear = of.startsWith("gears.") ? works.gears().get(entry) : null;
            boolean ring = gear != null && Boolean.TRUE.equals(gear.inside());
            // A ring's teeth are cut inside what may have teeth outside as well.
            Shaped before = shapedBy.putIfAbsent(ring ? part + " inside" : part, new Shaped(of, entry));
            if (before == null) {
                return;
            }
            PawlEntry mine = works.joints(PawlEntry.class).get(entry);
            PawlEntry other = works.joints(PawlEntry.class).get(before.entry());
            if (of.startsWith("pawls.") && before.path().startsWith("pawls.") && mine != null && other != null) {
                agree(new Pawl(of, entry, mine), new Pawl(before.path(), before.entry(), other), around);
            } else {
                around.problem(
                        path,
                        "the outline of \"" + part + "\" is made from " + before.path()
                                + " already; expected one for each part: name another part, or take one of the two out");
            }
        });
    }

    private record Pawl(String path, String name, PawlEntry entry) {

        /** What it says of its wheel, by the words that say it. */
        Map<String, Object> wheel(Around around) {
            Map<String, Object> said = new LinkedHashMap<>();
            said.put("at", around.point(entry.at(), name));
            said.put("teeth", entry.teeth());
            said.put("radius", entry.radius());
            said.put("depth", entry.depth());
            said.put("clockwise", Boolean.TRUE.equals(entry.clockwise()));
            Double first = entry.first();
            said.put("first", first == null ? 0.0 : first);
            return said;
        }
    }

    private static void agree(Pawl mine, Pawl other, Around around) {
        Map<String, Object> before = other.wheel(around);
        mine.wheel(around).forEach((word, said) -> {
            if (!Objects.equals(said, before.get(word))) {
                around.problem(
                        mine.path() + "." + word,
                        word + " is not what " + other.path() + " says of the same ratchet, \""
                                + mine.entry().wheel() + "\"" + (word.equals("at") ? "" : ": " + before.get(word))
                                + "; expected the same of both: a ratchet has one set of teeth");
            }
        });
    }
}
