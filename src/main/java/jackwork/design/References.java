package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Point;
import jackwork.stock.Coins;
import jackwork.stock.Fasteners;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Holds the files of a design against each other: every name used must exist, every point be known. */
final class References {

    /** What joints call everything that never moves. */
    private static final String GROUND = "box";

    /** A printed sleeve is two printed lines thick all round, mm on diameter. */
    private static final double LEAST_SLEEVE = 1.6;

    private final WorkshopFile workshop;
    private final BoxFile box;
    private final YamlFile boxYaml;
    private final Drawing boxDrawing;
    private final FigureFile figure;
    private final YamlFile figureYaml;
    private final Drawing figureDrawing;
    private final Set<String> allParts = new LinkedHashSet<>();

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
        allParts.addAll(box.parts().keySet());
        allParts.addAll(figure.parts().keySet());
    }

    void check() {
        for (String name : figure.parts().keySet()) {
            if (box.parts().containsKey(name)) {
                figureYaml.problem("parts." + name, "the box has a part \"" + name + "\" too; give one another name");
            }
        }
        checkWorks(box, boxYaml, boxDrawing, box.parts().keySet());
        checkWorks(figure, figureYaml, figureDrawing, allParts);
        if (box.fixed().isEmpty()) {
            boxYaml.problem("fixed", "a box needs at least one part that never moves");
        }
        ClothReferences.check(figure, figureYaml, figureDrawing);
        checkMounts();
        checkLever();
        checkCoinWorks();
        CaseEntry housing = box.housing();
        if (housing != null) {
            housing.check(workshop, boxDrawing, boxYaml);
        }
    }

    private void checkWorks(Works works, YamlFile yaml, Drawing drawing, Set<String> nameable) {
        Set<String> made = Works.madeOutlines(works);
        works.parts().forEach((name, part) -> {
            checkPart(name, part, yaml, drawing, made.contains(name));
            part.check(name, works, yaml);
        });
        new JointReferences(workshop, works, yaml, drawing, nameable, allGears(), pinNames()).check();
        works.fixed().forEach(name -> known("fixed", name, works.parts().keySet(), "a part of this file", yaml));
        checkGlued(works, yaml);
        works.pins().forEach((name, pin) -> checkPin(name, pin, yaml, drawing, nameable));
        works.slides().forEach((name, slide) -> {
            String path = "slides." + name;
            partOrGround(path + ".part", slide.part(), nameable, yaml);
            known(path + ".in", slide.in(), nameable, "a part with the slot", yaml);
            rod(path + ".rod", slide.rod(), yaml);
            place(path, slide.peg(), name, drawing, yaml);
            place(path + ".from", slide.from(), "", drawing, yaml);
            place(path + ".to", slide.to(), "", drawing, yaml);
            if (slide.via() != null) {
                place(path + ".via", slide.via(), "", drawing, yaml);
            }
        });
        works.stops().forEach((name, stop) -> {
            String path = "stops." + name;
            if (stop.between().size() != 2) {
                yaml.problem(path + ".between", "expected two parts");
            }
            stop.between().forEach(part -> partOrGround(path + ".between", part, nameable, yaml));
            known(path + ".pin", stop.pin(), pinNames(), "a pin", yaml);
            if (!(stop.from() <= 0 && stop.to() >= 0)) {
                yaml.problem(
                        path,
                        "from " + stop.from() + " to " + stop.to()
                                + " degrees leaves out 0, the position drawn; expected from ≤ 0 ≤ to");
            }
        });
        works.weights().forEach((name, weight) -> checkWeight(name, weight, yaml, drawing, works));
        PictureReferences.check(works, yaml, drawing);
    }

    private void checkPart(String name, PartEntry part, YamlFile yaml, Drawing drawing, boolean made) {
        String path = "parts." + name;
        if (!name.matches("[A-Za-z][A-Za-z0-9-]*") || name.equals(GROUND)) {
            yaml.problem(
                    path,
                    "a part cannot be called \"" + name
                            + "\"; expected a word of letters, digits and hyphens, other than \"box\"");
        }
        known(path + ".stock", part.stock(), workshop.sheets().keySet(), "a sheet of workshop.yaml", yaml);
        String drawn = part.drawn();
        String id = drawn == null ? name : drawn;
        if (!made && !drawing.outlines().containsKey(id)) {
            yaml.problem(
                    path,
                    "the drawing has no closed outline with id \"" + id + "\""
                            + NearestWord.hint(id, drawing.outlines().keySet()));
        }
        String paint = part.paint();
        if (paint != null && !paint.matches("#[0-9A-Fa-f]{6}")) {
            yaml.problem(path + ".paint", "read \"" + paint + "\", expected a colour as \"#rrggbb\"");
        }
    }

    private static void checkGlued(Works works, YamlFile yaml) {
        Map<String, String> seen = new HashMap<>();
        works.fixed().forEach(part -> seen.put(part, "fixed"));
        for (int i = 0; i < works.glued().size(); i++) {
            String path = "glued." + i;
            for (String part : works.glued().get(i)) {
                known(path, part, works.parts().keySet(), "a part of this file", yaml);
                String before = seen.put(part, path);
                if (before != null) {
                    yaml.problem(path, "\"" + part + "\" is glued or fixed already; name each part once");
                }
            }
        }
    }

    private void checkPin(String name, PinEntry pin, YamlFile yaml, Drawing drawing, Set<String> nameable) {
        String path = "pins." + name;
        if (pin.parts().size() < 2) {
            yaml.problem(
                    path,
                    "a pin goes through two parts or more, this one names "
                            + pin.parts().size());
        }
        for (int i = 0; i < pin.parts().size(); i++) {
            partOrGround(path + ".parts." + i, pin.parts().get(i), nameable, yaml);
        }
        String tight = pin.tight();
        if (tight != null) {
            known(path + ".tight", tight, pin.parts(), "one of the pin's parts", yaml);
        }
        rod(path + ".rod", pin.rod(), yaml);
        place(path, pin.at(), name, drawing, yaml);
        WorkshopFile.RodEntry rod = workshop.rods().get(pin.rod());
        Double shoulder = pin.shoulder();
        if (shoulder != null && rod != null && !(shoulder >= rod.diameter().value() + LEAST_SLEEVE)) {
            yaml.problem(
                    path + ".shoulder",
                    "read " + shoulder + ", expected at least " + LEAST_SLEEVE + " mm more than the rod, which is "
                            + rod.diameter().value());
        }
    }

    private void checkWeight(String name, WeightEntry weight, YamlFile yaml, Drawing drawing, Works works) {
        String path = "weights." + name;
        known(path + ".on", weight.on(), works.parts().keySet(), "a part of this file", yaml);
        place(path, weight.at(), name, drawing, yaml);
        String what = weight.what();
        if ((what == null) == (weight.mass() == null)) {
            yaml.problem(path, "expected either what (a nut or washer) or mass (grams)");
        }
        if (what != null) {
            known(path + ".what", what, Fasteners.catalogue().names(), "a fastener of the catalogue", yaml);
        }
        Integer count = weight.count();
        if (count != null && (count < 0 || count > 1000)) {
            yaml.problem(path + ".count", "read " + count + ", expected 0 to 1000");
        }
    }

    private void checkMounts() {
        if (figure.mounts().isEmpty()) {
            figureYaml.problem("mounts", "a figure needs at least one mount to hold it to a box");
        }
        figure.mounts().forEach((name, mount) -> {
            checkMount(name, mount, figure, figureYaml, figureDrawing);
            known("mounts." + name, name, box.mounts().keySet(), "a mount of the box", figureYaml);
        });
        box.mounts().forEach((name, mount) -> checkMount(name, mount, box, boxYaml, boxDrawing));
    }

    private void checkMount(String name, MountEntry mount, Works works, YamlFile yaml, Drawing drawing) {
        String path = "mounts." + name;
        mount.parts()
                .forEach(part -> known(path + ".parts", part, works.parts().keySet(), "a part of this file", yaml));
        rod(path + ".rod", mount.rod(), yaml);
        place(path, mount.at(), name, drawing, yaml);
    }

    private void checkLever() {
        LeverEntry lever = box.lever();
        known("lever.part", lever.part(), box.parts().keySet(), "a part of the box", boxYaml);
        known("lever.pin", lever.pin(), box.pins().keySet(), "a pin of the box", boxYaml);
        place("lever.press", lever.press(), "", boxDrawing, boxYaml);
        if (!(lever.turn() > 0 && lever.turn() < 90)) {
            boxYaml.problem("lever.throw", "read " + lever.turn() + ", expected more than 0 and less than 90 degrees");
        }
    }

    private void checkCoinWorks() {
        CoinWorksEntry works = box.coinWorks();
        CoinWorksEntry.Bucket bucket = works.bucket();
        String path = "coin-works.bucket";
        known(path + ".part", bucket.part(), box.parts().keySet(), "a part of the box", boxYaml);
        known(path + ".pin", bucket.pin(), box.pins().keySet(), "a pin of the box", boxYaml);
        place(path + ".heel", bucket.heel(), "", boxDrawing, boxYaml);
        if (bucket.rise() != null) {
            place(path + ".rise", bucket.rise(), "", boxDrawing, boxYaml);
        }
        place(path + ".toe", bucket.toe(), "", boxDrawing, boxYaml);
        place(path + ".lip", bucket.lip(), "", boxDrawing, boxYaml);
        place("coin-works.catch.tooth", works.holds().tooth(), "", boxDrawing, boxYaml);
        place("coin-works.catch.strut", works.holds().strut(), "", boxDrawing, boxYaml);
        place("coin-works.kicker", works.kicker(), "", boxDrawing, boxYaml);
        place("coin-works.slot.at", works.slot().at(), "", boxDrawing, boxYaml);
        positive(path + ".tip", bucket.tip());
        positive(path + ".bearing", bucket.bearing());
        positive(path + ".side-gap", bucket.sideGap());
        positive("coin-works.slot.length", works.slot().length());
        positive("coin-works.slot.width", works.slot().width());
    }

    private void positive(String path, double value) {
        if (!(value > 0)) {
            boxYaml.problem(path, "read " + value + ", expected more than 0");
        }
    }

    void checkDesign(DesignFile design, YamlFile yaml) {
        if (design.coins().isEmpty()) {
            yaml.problem("coins", "names no coin; expected at least one that the piece must take, as in [EUR-1]");
        }
        for (int i = 0; i < design.coins().size(); i++) {
            if (design.coins().indexOf(design.coins().get(i)) < i) {
                yaml.problem("coins." + i, "read \"" + design.coins().get(i) + "\" a second time; keep one of the two");
            }
            known("coins." + i, design.coins().get(i), Coins.catalogue().names(), "a coin of the catalogue", yaml);
        }
        design.gestures().forEach((name, gesture) -> {
            String path = "gestures." + name;
            known(path + ".part", gesture.part(), allParts, "a part", yaml);
            boolean ofBox = box.parts().containsKey(gesture.part());
            place(path, gesture.point(), name, ofBox ? boxDrawing : figureDrawing, yaml);
            Double by = gesture.by();
            if (by != null && !(by >= 0 && by <= 1)) {
                yaml.problem(path + ".by", "read " + by + ", expected a stroke from 0 to 1");
            }
        });
    }

    private Collection<String> allGears() {
        List<String> names = new ArrayList<>(box.gears().keySet());
        names.addAll(figure.gears().keySet());
        return names;
    }

    private Collection<String> pinNames() {
        List<String> names = new ArrayList<>(box.pins().keySet());
        names.addAll(figure.pins().keySet());
        return names;
    }

    static void partOrGround(String path, String name, Set<String> nameable, YamlFile yaml) {
        if (!name.equals(GROUND)) {
            known(path, name, nameable, "a part", yaml);
        }
    }

    private void rod(String path, String name, YamlFile yaml) {
        known(path, name, workshop.rods().keySet(), "a rod of workshop.yaml", yaml);
    }

    static void known(String path, String name, Collection<String> known, String what, YamlFile yaml) {
        if (!known.contains(name)) {
            yaml.problem(path, "read \"" + name + "\", expected " + what + NearestWord.hint(name, known));
        }
    }

    static void place(String path, @Nullable Place place, String fallback, Drawing drawing, YamlFile yaml) {
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
