package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Holds the files of a design against each other: every name used must exist, every point be known. */
final class References {

    /** What joints call everything that never moves. */
    static final String GROUND = "box";

    /** Names stand in paths, ids and cut files. */
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{M}\\p{N}_-]{0,59}");

    private final WorkshopFile workshop;
    private final BoxFile box;
    private final YamlFile boxYaml;
    private final Drawing boxDrawing;
    private final FigureFile figure;
    private final YamlFile figureYaml;
    private final Drawing figureDrawing;

    References(
            WorkshopFile workshop,
            BoxFile box,
            YamlFile boxYaml,
            Drawing boxDrawing,
            FigureFile figure,
            YamlFile figureYaml,
            Drawing figureDrawing) {
        this.workshop = workshop;
        this.box = box;
        this.boxYaml = boxYaml;
        this.boxDrawing = boxDrawing;
        this.figure = figure;
        this.figureYaml = figureYaml;
        this.figureDrawing = figureDrawing;
    }

    /** Names and points alone: what can be told of files that are wrong in something else. */
    void checkNames(DesignFile design, YamlFile designYaml) {
        KnownNames.ofBox(workshop, box, boxDrawing).check(box, boxYaml);
        checkPlaces(box, boxDrawing, boxYaml);
        KnownNames ofFigure = KnownNames.ofFigure(workshop, box, figure, figureDrawing);
        ofFigure.check(figure, figureYaml);
        checkPlaces(figure, figureDrawing, figureYaml);
        ofFigure.check(design, designYaml);
    }

    void check() {
        checkShared("part", figure.works().parts(), box.works().parts());
        checkShared("pin", figure.works().pins(), box.works().pins());
        checkShared("gear", figure.works().gears(), box.works().gears());
        checkFile(box, box.works(), boxYaml, boxDrawing, KnownNames.ofBox(workshop, box, boxDrawing));
        checkFile(
                figure,
                figure.works(),
                figureYaml,
                figureDrawing,
                KnownNames.ofFigure(workshop, box, figure, figureDrawing));
        if (box.works().fixed().isEmpty()) {
            boxYaml.problem("fixed", "a box needs at least one part that never moves");
        }
        if (figure.works().mounts().isEmpty()) {
            figureYaml.problem("mounts", "a figure needs mounts to hold it to a box");
        } else if (figure.works().mounts().size() == 1) {
            figureYaml.problem(
                    "mounts", "read one mount, expected two or more: about a single rod the figure turns on its box");
        }
        figure.works().mounts().forEach((name, mount) -> {
            MountEntry other = box.works().mounts().get(name);
            if (other != null && !other.rod().equals(mount.rod())) {
                figureYaml.problem(
                        "mounts." + name + ".rod",
                        "read " + mount.rod() + ", and the box has " + other.rod()
                                + " there: one rod goes through both, write the same");
            }
        });
        figure.works()
                .mounts()
                .keySet()
                .forEach(name ->
                        known("mounts." + name, name, box.works().mounts().keySet(), "a mount of the box", figureYaml));
        checkPrinted();
        checkPivot("lever", box.lever().part(), box.lever().pin());
        checkPivot(
                "coin-works.bucket",
                box.coinWorks().bucket().part(),
                box.coinWorks().bucket().pin());
    }

    /** What is printed in one never moves against itself; those that are fewest are told to be astray. */
    private void checkPrinted() {
        Map<String, Map<List<String>, List<String>>> pieces = new LinkedHashMap<>();
        for (Works works : List.of(box.works(), figure.works())) {
            works.parts().forEach((name, part) -> {
                String piece = part.printed();
                if (piece != null) {
                    pieces.computeIfAbsent(piece, key -> new LinkedHashMap<>())
                            .computeIfAbsent(body(name), key -> new ArrayList<>())
                            .add(name);
                }
            });
        }
        pieces.forEach((piece, bodies) -> {
            List<String> most = bodies.values().stream()
                    .max(Comparator.comparingInt(List::size))
                    .orElseThrow();
            bodies.values().stream()
                    .filter(parts -> !parts.equals(most))
                    .flatMap(List::stream)
                    .forEach(name -> astray(piece, name, most.get(0)));
        });
    }

    private void astray(String piece, String name, String other) {
        YamlFile yaml = box.works().parts().containsKey(name) ? boxYaml : figureYaml;
        yaml.problem(
                "parts." + name + ".printed",
                "read \"" + piece + "\", as of " + other + ", but " + name + " and " + other
                        + " are not one body; fix or glue them together, or give the piece another name");
    }

    /** The parts that one never moves against, itself among them. */
    private List<String> body(String part) {
        if (box.works().fixed().contains(part) || figure.works().fixed().contains(part)) {
            return List.of(GROUND);
        }
        return Stream.of(box.works(), figure.works())
                .flatMap(works -> works.glued().stream())
                .filter(group -> group.contains(part))
                .findFirst()
                .orElse(List.of(part));
    }

    /** What turns about a pin of the box must be on it, and so must something that never moves. */
    private void checkPivot(String path, String part, String pin) {
        PinEntry entry = box.works().pins().get(pin);
        if (entry == null || !box.works().parts().containsKey(part)) {
            return; // said already
        }
        List<String> body = box.works().glued().stream()
                .filter(group -> group.contains(part))
                .findFirst()
                .orElse(List.of(part));
        boolean turns = entry.parts().stream().anyMatch(body::contains);
        boolean held = entry.parts().stream()
                .anyMatch(one -> one.equals(GROUND) || box.works().fixed().contains(one));
        if (!turns || !held) {
            boxYaml.problem(
                    path + ".pin",
                    "read \"" + pin + "\", which goes through "
                            + String.join(", ", entry.parts())
                            + "; expected the pin on which " + part + " turns, held by a part that never moves");
        }
    }

    /** A figure's joints may name what is in the box: a name that both have would mean either. */
    private void checkShared(String what, Map<String, ?> ofFigure, Map<String, ?> ofBox) {
        for (String name : ofFigure.keySet()) {
            if (ofBox.containsKey(name)) {
                figureYaml.problem(
                        what + "s." + name, "the box has a " + what + " \"" + name + "\" too; give one another name");
            }
        }
    }

    private void checkFile(Record file, Works works, YamlFile yaml, Drawing drawing, KnownNames known) {
        known.check(file, yaml);
        checkPlaces(file, drawing, yaml);
        checkGlued(works, yaml);
        Around around = new Around(workshop, works, yaml, drawing);
        ShapedOnce.check(works, around);
        Sections.of(file)
                .forEach((section, entries) -> entries.forEach((name, entry) -> {
                    checkName(section + "." + name, name, yaml);
                    if (entry instanceof Entry one) {
                        one.check(section + "." + name, around);
                    }
                }));
    }

    private static void checkName(String path, String name, YamlFile yaml) {
        if (!NAME.matcher(name).matches()) {
            yaml.problem(
                    path,
                    "read the name \"" + name
                            + "\", expected letters, digits, hyphens and underscores, a letter first");
        }
    }

    private static void checkPlaces(Record file, Drawing drawing, YamlFile yaml) {
        Walk.over(file, "", (path, entry, word, value) -> {
            if (word.leaf() == Place.class && (value != null || word.isOwnCircle())) {
                place(path, (Place) value, entry, drawing, yaml);
            }
        });
    }

    private static void checkGlued(Works works, YamlFile yaml) {
        Map<String, String> seen = new HashMap<>();
        for (int i = 0; i < works.fixed().size(); i++) {
            if (seen.put(works.fixed().get(i), "fixed") != null) {
                yaml.problem("fixed." + i, "read \"" + works.fixed().get(i) + "\" a second time; name each part once");
            }
        }
        for (int i = 0; i < works.glued().size(); i++) {
            String path = "glued." + i;
            for (String part : works.glued().get(i)) {
                if (seen.put(part, path) != null) {
                    yaml.problem(path, "\"" + part + "\" is glued or fixed already; name each part once");
                }
            }
        }
    }

    void checkDesign(DesignFile design, YamlFile yaml) {
        KnownNames.ofFigure(workshop, box, figure, figureDrawing).check(design, yaml);
        if (design.coins().isEmpty()) {
            yaml.problem("coins", "names no coin; expected at least one that the piece must take, as in [EUR-1]");
        }
        for (int i = 0; i < design.coins().size(); i++) {
            if (design.coins().indexOf(design.coins().get(i)) < i) {
                yaml.problem("coins." + i, "read \"" + design.coins().get(i) + "\" a second time; keep one of the two");
            }
        }
        design.gestures().forEach((name, gesture) -> {
            checkName("gestures." + name, name, yaml);
            boolean ofBox = box.works().parts().containsKey(gesture.part());
            place("gestures." + name, gesture.point(), name, ofBox ? boxDrawing : figureDrawing, yaml);
        });
        design.adjusters().keySet().forEach(name -> checkName("adjusters." + name, name, yaml));
    }

    static void known(String path, String name, java.util.Collection<String> known, String what, YamlFile yaml) {
        if (!known.contains(name)) {
            yaml.problem(path, "read \"" + name + "\", expected " + what + NearestWord.hint(name, known));
        }
    }

    private static void place(String path, @Nullable Place place, String fallback, Drawing drawing, YamlFile yaml) {
        if (place instanceof Place.At) {
            return;
        }
        String id = place instanceof Place.Drawn drawn ? drawn.id() : fallback;
        if (!drawing.circles().containsKey(id)) {
            yaml.problem(
                    path,
                    "the drawing has no circle with id \"" + id + "\""
                            + NearestWord.hint(id, drawing.circles().keySet()));
        }
    }

    /** A checked place, in the drawing's own frame. */
    static Point point(Drawing drawing, @Nullable Place place, String fallback) {
        if (place instanceof Place.At at) {
            return at.point();
        }
        String id = place instanceof Place.Drawn drawn ? drawn.id() : fallback;
        return drawing.circle(id)
                .orElseThrow(() -> new IllegalStateException("circle " + id + " was not checked on reading"))
                .centre();
    }
}
