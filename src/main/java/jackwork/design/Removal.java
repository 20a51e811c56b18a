package jackwork.design;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Takes an entry out of a design's texts, and then whatever cannot be without it: a pin that joins nothing any more, a stop
 * about that pin, a gear that runs in nothing. What names it is found by what it is, not by how it is spelt.
 */
final class Removal {

    /** Lists of parts of which one may go while so many stay. */
    private static final Map<String, Integer> LEAST = Map.of("pins", 2, "mounts", 1);

    private final DesignTexts texts;
    /** Ids of closed outlines by file. */
    private final Map<String, Set<String>> outlines;

    /** What had a shape before anything went, by file: gears that ran in something, parts whose outline was made. */
    private final Map<String, Set<String>> ran = new HashMap<>();

    private final Map<String, Set<String>> made = new HashMap<>();

    Removal(DesignTexts texts, Map<String, Set<String>> outlines) {
        this.texts = texts;
        this.outlines = outlines;
        for (String file : List.of(DesignTexts.BOX, DesignTexts.FIGURE)) {
            ran.put(file, running(file));
            made.put(file, shaped(file));
        }
    }

    /**
     * @param file box, figure or design
     * @throws DesignException when something that the box cannot be without is named so; nothing may be kept then
     */
    void entry(String file, String section, String name) {
        if (texts.has(file, List.of(section, name))) {
            texts.remove(file, List.of(section, name));
        }
        for (String change : texts.changesBelow(file + "." + section + "." + name)) {
            texts.remove(DesignTexts.DESIGN, List.of("change", change));
        }
        for (String adjuster :
                texts.adjustersBelow(file + "." + section + "." + name).keySet()) {
            texts.remove(DesignTexts.DESIGN, List.of("adjusters", adjuster));
        }
        NameKind.ofSection(section).ifPresent(kind -> whatNames(file, kind, name));
        if (file.equals(DesignTexts.BOX) && section.equals("mounts")) {
            entryIfThere(DesignTexts.FIGURE, section, name);
        }
        orphans(file);
    }

    private void entryIfThere(String file, String section, String name) {
        if (texts.has(file, List.of(section, name))) {
            entry(file, section, name);
        }
    }

    /** One after another: places shift with each. */
    private void whatNames(String file, NameKind kind, String name) {
        List<DesignTexts.Named> left = texts.mentions(file, kind, name);
        while (!left.isEmpty()) {
            drop(left.get(0), name, left);
            List<DesignTexts.Named> now = texts.mentions(file, kind, name);
            if (now.size() >= left.size()) {
                throw new IllegalStateException(
                        "\"" + name + "\" stays named at " + left.get(0).place());
            }
            left = now;
        }
    }

    private void drop(DesignTexts.Named named, String name, List<DesignTexts.Named> all) {
        List<String> place = named.place();
        String section = place.get(0);
        if (section.equals("fixed") || section.equals("glued")) {
            thin(named);
        } else if (isSection(named.about(), section)) {
            if (mayThin(named, all)) {
                texts.remove(named.file(), named.mention().path());
            } else {
                entry(named.about(), section, place.get(1));
            }
        } else {
            throw DesignException.of(
                    named.about() + "." + String.join(".", place),
                    "\"" + name + "\" is needed there; name another one there first, then take this one out");
        }
    }

    /** Takes an item out of a list; a group of fewer than two glued parts goes too. */
    private void thin(DesignTexts.Named named) {
        List<String> path = named.mention().path();
        List<String> list = path.subList(0, path.size() - 1);
        boolean group = named.place().get(0).equals("glued");
        boolean whole = group && texts.size(named.file(), list) <= 2;
        texts.remove(named.file(), whole ? list : path);
    }

    private boolean mayThin(DesignTexts.Named named, List<DesignTexts.Named> all) {
        List<String> place = named.place();
        Integer least = LEAST.get(place.get(0));
        List<String> path = named.mention().path();
        return least != null
                && place.size() == 4
                && place.get(2).equals("parts")
                && texts.size(named.file(), path.subList(0, path.size() - 1)) > least
                && all.stream()
                        .map(DesignTexts.Named::place)
                        .noneMatch(other -> other.size() == 3
                                && other.subList(0, 2).equals(place.subList(0, 2))
                                && other.get(2).equals("tight"));
    }

    private static boolean isSection(String file, String key) {
        return Vocabulary.flat(Vocabulary.file(file)).stream()
                .anyMatch(word -> word.key().equals(key) && word.isMap());
    }

    /** What has no shape any more: gears that run in nothing, parts whose outline was made from what went. */
    private void orphans(String file) {
        Set<String> run = running(file);
        for (String gear : ran.getOrDefault(file, Set.of())) {
            if (!run.contains(gear)) {
                entryIfThere(file, "gears", gear);
            }
        }
        Set<String> shaped = shaped(file);
        for (String part : made.getOrDefault(file, Set.of())) {
            boolean drawn = texts.has(file, List.of("parts", part, "drawn"))
                    || outlines.getOrDefault(file, Set.of()).contains(part);
            if (!drawn && !shaped.contains(part)) {
                entryIfThere(file, "parts", part);
            }
        }
    }

    /** Gears that a mesh or a rack names. */
    private Set<String> running(String file) {
        return names(file, mention -> mention.kind() == NameKind.GEAR);
    }

    /** Parts whose outline is made from an entry. */
    private Set<String> shaped(String file) {
        return names(file, mention -> mention.names().shapes());
    }

    private Set<String> names(String file, Predicate<Mentions.Mention> which) {
        if (file.equals(DesignTexts.DESIGN)) {
            return Set.of();
        }
        Set<String> names = new LinkedHashSet<>();
        Mentions.in(Vocabulary.file(file), texts.values(file)).stream()
                .filter(which)
                .forEach(mention -> names.add(mention.name()));
        return names;
    }
}
