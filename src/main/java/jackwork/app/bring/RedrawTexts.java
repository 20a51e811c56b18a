package jackwork.app.bring;

import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.design.EntryEdit;
import jackwork.design.Works;
import jackwork.design.YamlEdit;
import jackwork.design.YamlWords;
import jackwork.drawing.Candidates;
import jackwork.drawing.DrawingSvg;
import jackwork.drawing.Redrawing;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Slot;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The texts of a design whose drawing was drawn again. Joints stay: their points are found again, or go with the parts
 * that they hold; a rod or post that the drawing never had follows them.
 */
final class RedrawTexts {

    private static final double MOVED = 0.05;
    /** Wood round a point that a kept part must reach, mm. */
    private static final double REACH = 3;

    private static final double POST_WIDTH = 16;
    private static final double BAR = 0.97;

    private final Design design;
    private final RedrawHeld held;
    private final Redrawn.Redraw plan;
    private final Redrawing found;
    /** The points that entries of the figure name, with the parts that they hold. */
    private final Map<String, List<String>> holding = new LinkedHashMap<>();

    RedrawTexts(Design design, RedrawHeld held, Redrawn.Redraw plan) {
        this.design = design;
        this.held = held;
        this.plan = plan;
        this.found = held.found();
        for (EntryEdit.Entry entry : EntryEdit.entries(design)) {
            if (entry.path().startsWith("figure.")) {
                holding.computeIfAbsent(entry.name(), name -> new ArrayList<>()).addAll(entry.about());
            }
        }
    }

    Map<Path, String> of(Map<Path, String> before, Path svg) {
        Map<Path, String> after = new LinkedHashMap<>(before);
        DesignFiles files = DesignFiles.of(design);
        plan.added().forEach(part -> add(files, after, part));
        plan.dropped().forEach(part -> EntryEdit.remove(design, files, after, "figure.parts." + part));
        boolean asItIs =
                held.isSameFile() && plan.added().isEmpty() && plan.dropped().isEmpty();
        after.put(svg, asItIs ? plan.text() : drawing());
        return after;
    }

    private void add(DesignFiles files, Map<Path, String> texts, Redrawn.AddedPart part) {
        if (!BringNames.isPlain(part.name())
                || held.old().outlines().containsKey(part.name())
                || held.old().circles().containsKey(part.name())) {
            throw new BringException(
                    "\"" + part.name() + "\" cannot be a new part's name",
                    "Use small letters, digits and hyphens, and a word that is not taken.");
        }
        if (!design.workshop().sheets().containsKey(part.stock())) {
            throw new BringException("the workshop has no \"" + part.stock() + "\"", "Choose one of its sheets.");
        }
        EntryEdit.add(
                files,
                texts,
                "figure.parts." + part.name(),
                "{stock: " + YamlWords.quoted(part.stock()) + ", layer: " + part.layer() + "}");
        Works figure = design.figure().works();
        List<String> path;
        String value = YamlWords.quoted(part.name());
        int group = group(part.on());
        if (!figure.parts().containsKey(part.on())) {
            throw new BringException(
                    "there is no part \"" + part.on() + "\" to glue it to", "Choose one of the parts.");
        } else if (figure.fixed().contains(part.on())) {
            path = List.of("fixed", String.valueOf(figure.fixed().size()));
        } else if (group >= 0) {
            int size = figure.glued().get(group).size();
            path = List.of("glued", String.valueOf(group), String.valueOf(size));
        } else {
            value = "[" + YamlWords.quoted(part.on()) + ", " + value + "]";
            path = List.of("glued", String.valueOf(figure.glued().size()));
            if (figure.glued().isEmpty()) {
                path = List.of("glued");
                value = "[" + value + "]";
            }
        }
        String text = Objects.requireNonNull(texts.get(files.figure()));
        texts.put(files.figure(), YamlEdit.set("figure.yaml", text, path, value));
    }

    private int group(String part) {
        List<List<String>> glued = design.figure().works().glued();
        for (int i = 0; i < glued.size(); i++) {
            if (glued.get(i).contains(part)) {
                return i;
            }
        }
        return -1;
    }

    private String drawing() {
        Map<String, Circle> circles = new LinkedHashMap<>();
        held.old()
                .circles()
                .forEach((name, circle) -> circles.put(name, new Circle(at(name, circle), circle.radius())));
        Map<String, Outline> outlines = new LinkedHashMap<>();
        held.old().outlines().forEach((name, outline) -> {
            if (!plan.dropped().contains(name)) {
                Redrawing.Part part = found.parts().get(name);
                outlines.put(name, part == null ? kept(name, outline) : drawnAgain(part.key(), outline));
            }
        });
        for (Redrawn.AddedPart part : plan.added()) {
            Outline outline = held.outline(part.key())
                    .orElseThrow(() -> new BringException(
                            "the drawing has no outline \"" + part.key() + "\"", "Drop it here again."));
            outlines.put(part.name(), drawnAgain(part.key(), outline));
        }
        return DrawingSvg.write(
                design.name() + ", drawn at rest. One unit is one millimetre.",
                held.scale(),
                outlines,
                circles,
                lines(outlines));
    }

    /** A new outline with the openings that it was drawn with, and those that the maker asked for; pins are bored later. */
    private Outline drawnAgain(String key, Outline old) {
        Outline outline = held.outline(key).orElse(old);
        Set<String> bored = new LinkedHashSet<>();
        found.points().forEach((name, spot) -> {
            if (holding.containsKey(name)) {
                bored.add(spot.key());
            }
        });
        List<Circle> cuts = new ArrayList<>();
        held.cutOuts(key).forEach((round, circle) -> {
            if (!bored.contains(round)) {
                cuts.add(circle);
            }
        });
        held.old()
                .circles()
                .forEach((name, circle) -> Redrawing.boreAt(old, circle.centre())
                        .filter(bore -> !holding.containsKey(name))
                        .map(bore -> new Circle(at(name, circle), bore.radius()))
                        .filter(bore ->
                                cuts.stream().noneMatch(cut -> cut.centre().distance(bore.centre()) < bore.radius()))
                        .ifPresent(cuts::add));
        for (Circle cut : cuts) {
            outline = outline.without(cut, 0.005);
        }
        return outline;
    }

    /** Where a point is now: as drawn, else carried along by a part that it holds. */
    private Point at(String name, Circle circle) {
        Redrawing.Spot spot = found.points().get(name);
        if (spot != null) {
            return held.round(spot.key()).orElse(circle.centre());
        }
        for (String part : holding.getOrDefault(name, List.of())) {
            Outline outline = held.old().outlines().get(part);
            if (found.parts().containsKey(part) && outline != null && outline.contains(circle.centre())) {
                return found.carried(part, outline, circle.centre());
            }
        }
        return circle.centre();
    }

    /** A part that the new drawing lacks: as it was, but it still reaches its points. */
    private Outline kept(String name, Outline outline) {
        List<Point> was = new ArrayList<>();
        List<Point> now = new ArrayList<>();
        held.old().circles().forEach((point, circle) -> {
            if (holding.getOrDefault(point, List.of()).contains(name) && outline.contains(circle.centre())) {
                was.add(circle.centre());
                now.add(at(point, circle));
            }
        });
        if (was.size() == 2 && was.get(0).distance(was.get(1)) > 1) {
            double width = 2 * outline.distanceToEdge(was.get(0));
            Outline bar = Slot.along(was.get(0), was.get(1), width);
            double shared = bar.sharedArea(outline);
            if (shared > BAR * (bar.area() + outline.area() - shared)
                    && now.get(0).distance(now.get(1)) > 1) {
                return Slot.along(now.get(0), now.get(1), width);
            }
        }
        Outline reaching = outline;
        for (int i = 0; i < was.size(); i++) {
            Point to = now.get(i);
            boolean moved = was.get(i).distance(to) > MOVED;
            if (moved && (!reaching.contains(to) || reaching.distanceToEdge(to) < REACH)) {
                reaching = reaching.with(Slot.along(was.get(i), to, POST_WIDTH));
            }
        }
        return reaching;
    }

    /** Engraved lines: the new drawing's where it has any, else the old ones, gone with their parts. */
    private Map<String, List<Point>> lines(Map<String, Outline> outlines) {
        Map<String, List<Point>> lines = new LinkedHashMap<>();
        for (Candidates.Open line : held.lines()) {
            List<Point> points = line.points().stream()
                    .map(point -> point.plus(found.shift()))
                    .toList();
            outlines.forEach((part, outline) -> {
                if (lines.values().stream().noneMatch(points::equals)
                        && points.stream().allMatch(outline::contains)) {
                    lines.put("engrave-" + part + "-" + (lines.size() + 1), points);
                }
            });
        }
        if (lines.isEmpty()) {
            held.old().lines().forEach((id, line) -> {
                String part = held.old().outlines().keySet().stream()
                        .filter(name -> id.equals("engrave-" + name) || id.startsWith("engrave-" + name + "-"))
                        .findFirst()
                        .orElse("");
                held.old()
                        .outline(part)
                        .filter(outline -> outlines.containsKey(part))
                        .ifPresent(outline -> lines.put(
                                id,
                                line.stream()
                                        .map(point -> found.carried(part, outline, point))
                                        .toList()));
            });
        }
        return lines;
    }
}
