package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.history.History;
import jackwork.app.history.HistoryFolder;
import jackwork.app.history.KeptTexts;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.DesignReader;
import jackwork.design.EntryEdit;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.PartException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Entries taken out, renamed and added at random on copies of the designs, with names chosen to collide: of parts, pins, points,
 * cords and rods. What is left always reads; a renaming changes nothing that is cut or moves; what goes with something had
 * named something that went; and every step is taken back byte for byte. {@code -Djackwork.edits=2500} for each design; few
 * in the usual run.
 */
class RandomEditsTest {

    private static final int EDITS = Integer.getInteger("jackwork.edits", 60);
    private static final int IN_A_ROW = 20;

    private static final List<String> COLLIDING = List.of(
            "wing",
            "hip",
            "cord",
            "thread",
            "bamboo-3",
            "birch-3",
            "tail",
            "beak",
            "body",
            "tooth",
            "strut",
            "kicker",
            "slot",
            "origin",
            "box",
            "left",
            "mount-left",
            "true",
            "null",
            "on",
            "y",
            "lever-press");

    @TempDir
    Path folder;

    private final List<String> refused = new ArrayList<>();
    private int kept;

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void whatIsLeftReadsAndComesBack(String name) throws Exception {
        Path workshop = DemoCopy.at(folder.resolve("workshop"));
        Random random = new Random(name.hashCode());
        for (int done = 0; done < EDITS; done += IN_A_ROW) {
            inARow(workshop, name, random, Math.min(IN_A_ROW, EDITS - done));
        }
        assertThat(kept).as("refused: " + refused).isGreaterThan(EDITS / 2);
    }

    private void inARow(Path workshop, String name, Random random, int edits) {
        Design before = DesignReader.read(workshop.resolve(name));
        DesignFiles files = DesignFiles.of(before);
        Map<Path, String> first = files.texts();
        History history = new History(
                workshop,
                HistoryFolder.ofDesign(workshop, name, () -> List.of(name)),
                () -> DesignFiles.changeable(workshop.resolve(name)));
        int steps = 0;
        for (int i = 0; i < edits; i++) {
            Map<Path, String> now = files.texts();
            Design design = DesignReader.readLike(before, now);
            Map<Path, String> then = new LinkedHashMap<>(now);
            List<EntryEdit.Entry> entries = EntryEdit.entries(design);
            EntryEdit.Entry entry = entries.get(random.nextInt(entries.size()));
            String what = "";
            try {
                switch (random.nextInt(5)) {
                    case 0 -> {
                        what = "take out " + entry.path();
                        EntryEdit.remove(design, files, then, entry.path());
                        requireReason(entry, entries, EntryEdit.entries(DesignReader.readLike(design, then)), what);
                    }
                    case 1 -> {
                        what = "add to " + entry.path();
                        String other = COLLIDING.get(random.nextInt(COLLIDING.size()));
                        String part = part(design, random);
                        EntryEdit.add(
                                files,
                                then,
                                "figure.weights." + other,
                                "{on: " + part + ", at: [" + random.nextInt(50) + ", 60], mass: 3}");
                        DesignReader.readLike(design, then);
                    }
                    default -> {
                        String other = random.nextInt(3) == 0
                                ? entries.get(random.nextInt(entries.size())).name()
                                : COLLIDING.get(random.nextInt(COLLIDING.size()));
                        what = "rename " + entry.path() + " to " + other;
                        EntryEdit.rename(design, files, then, entry.path(), other);
                        requireSame(design, DesignReader.readLike(design, then), what);
                    }
                }
            } catch (DesignException e) {
                assertThat(files.texts()).as(what).isEqualTo(now);
                refused.add(what + ": " + e.getMessage());
                continue;
            }
            Map<Path, String> old = new LinkedHashMap<>();
            Map<Path, String> changed = new LinkedHashMap<>();
            then.forEach((path, text) -> {
                if (!text.equals(now.get(path))) {
                    old.put(path, Objects.requireNonNull(now.get(path)));
                    changed.put(path, text);
                }
            });
            history.see(now);
            history.did(what, old, changed);
            history.write(old, changed);
            kept++;
            steps++;
        }
        for (int i = 0; i < steps; i++) {
            history.see(files.texts());
            History.Move move = history.undo().orElseThrow();
            Map<Path, String> old = new LinkedHashMap<>();
            move.texts().keySet().forEach(path -> old.put(path, KeptTexts.read(path)));
            history.write(old, move.texts());
            history.moved(move);
        }
        assertThat(files.texts()).isEqualTo(first);
    }

    private static String part(Design design, Random random) {
        List<String> parts = List.copyOf(design.figure().works().parts().keySet());
        return parts.get(random.nextInt(parts.size()));
    }

    /** What went had named something that went, by the old reading's own words; or it was a part or gear without a shape. */
    private static void requireReason(
            EntryEdit.Entry asked, List<EntryEdit.Entry> before, List<EntryEdit.Entry> after, String what) {
        Map<String, EntryEdit.Entry> left = new TreeMap<>();
        after.forEach(entry -> left.put(entry.path(), entry));
        Set<String> gone = new HashSet<>();
        before.stream().filter(entry -> !left.containsKey(entry.path())).forEach(entry -> gone.add(entry.name()));
        assertThat(left).as(what).doesNotContainKey(asked.path());
        for (EntryEdit.Entry entry : before) {
            EntryEdit.Entry now = left.get(entry.path());
            if (now == null) {
                assertThat(entry.equals(asked)
                                || entry.about().stream().anyMatch(gone::contains)
                                || gone.contains(entry.name())
                                        && entry.section().equals("pictures")
                                || Set.of("gears", "parts").contains(entry.section()))
                        .as(what + ": why did " + entry + " go?")
                        .isTrue();
            } else if (!now.equals(entry)) {
                List<String> lost = new ArrayList<>(entry.about());
                lost.removeAll(now.about());
                assertThat(gone).as(what + ": " + entry.path()).containsAll(lost);
                assertThat(entry.about()).as(what + ": " + entry.path()).containsAll(now.about());
            }
        }
        assertThat(left.keySet())
                .as(what)
                .isSubsetOf(before.stream().map(EntryEdit.Entry::path).toList());
    }

    /** A name is no matter: the same bodies in the same places, the same joints, the same outlines and holes. */
    private static void requireSame(Design before, Design after, String what) {
        assertThat(shape(after)).as(what).isEqualTo(shape(before));
        assertThat(after.file().coins()).as(what).isEqualTo(before.file().coins());
        assertThat(after.box().works().parts())
                .as(what)
                .hasSameSizeAs(before.box().works().parts());
    }

    private static List<String> shape(Design design) {
        Optional<Assembly> made;
        try {
            made = Optional.of(Assembler.assemble(design));
        } catch (PartException e) {
            return List.of("cannot be made");
        }
        Assembly assembly = made.get();
        List<String> shape = new ArrayList<>();
        assembly.bodies()
                .forEach(body -> shape.add("body " + body.mass() + " " + body.centre() + " " + body.inertia()));
        assembly.parts()
                .forEach(part -> shape.add("part " + part.outline().outer()
                        + part.outline().holes() + part.layer() + part.stock() + part.engraving()));
        assembly.pins().forEach(pin -> shape.add("pin " + pin.at() + pin.holder() + pin.runner() + pin.radius()));
        assembly.slides().forEach(slide -> shape.add("slide " + slide.at() + slide.peg() + slide.slot()));
        assembly.stops().forEach(stop -> shape.add("stop " + stop.a() + stop.b() + stop.from() + stop.to()));
        assembly.links().forEach(link -> shape.add(link.getClass().getSimpleName() + link.bodies() + link.frictions()));
        design.file().gestures().forEach((name, gesture) -> shape.add("gesture " + gesture.distance()));
        shape.sort(null);
        return shape;
    }
}
