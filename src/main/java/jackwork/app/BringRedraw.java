package jackwork.app;

import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.drawing.Candidates;
import jackwork.drawing.Drawing;
import jackwork.drawing.DrawingException;
import jackwork.drawing.Redrawing;
import jackwork.drawing.SvgCandidates;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A design's drawing drawn again: what became of each part and point, and the new texts once the maker agrees. */
final class BringRedraw {

    /** Less than this is the same place, mm. */
    private static final double SAME_PLACE = 0.05;

    /** Overlap above which an outline is the same. */
    private static final double SAME_SHAPE = 0.998;

    private static final double SAME_ANGLE = Math.toRadians(0.2);

    private final Workbench workbench;
    private final Editor editor;

    BringRedraw(Workbench workbench, Editor editor) {
        this.workbench = workbench;
        this.editor = editor;
    }

    /**
     * Holds a new drawing against a design's; nothing is changed.
     *
     * @param scale how much larger than its file it is; 0: as the design's own was made, or as the file says, whichever
     *     is more alike
     */
    Redrawn read(String id, String file, byte[] bytes, double scale) {
        Design design = workbench.design(id);
        DesignFiles files = DesignFiles.of(design);
        Held held = scale > 0 ? hold(design, file, bytes, scale) : likeliest(design, file, bytes);
        return new Redrawn(
                files.version(),
                held.scale,
                held.old.outlines().keySet().stream().map(held::part).toList(),
                held.old.circles().keySet().stream()
                        .filter(point -> !point.equals("origin"))
                        .map(held::point)
                        .toList(),
                held.added(),
                held.rounds(),
                workbench.sharing(id, files.figure()));
    }

    /** @throws BringException when the drawing cannot be used so; nothing is changed then */
    void accept(String id, Redrawn.Redraw plan) {
        Design design = workbench.design(id);
        byte[] bytes = plan.text().getBytes(StandardCharsets.UTF_8);
        Held held = hold(design, plan.file(), bytes, plan.scale()).as(plan.parts(), plan.points());
        Path svg = svg(design);
        Map<Path, String> before = new LinkedHashMap<>(DesignFiles.of(design).texts());
        before.put(svg, text(svg));
        Map<Path, String> after = new RedrawTexts(design, held, plan).of(before, svg);
        editor.replace(id, plan.base(), "the drawing drawn again", before, after);
    }

    private static String text(Path svg) {
        try {
            return Files.readString(svg);
        } catch (CharacterCodingException e) {
            throw new BringException(svg.getFileName() + " is not kept in UTF-8", "Save it in UTF-8 first.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path svg(Design design) {
        return DesignFiles.of(design)
                .figure()
                .resolveSibling(design.figure().drawing())
                .normalize();
    }

    private static Held likeliest(Design design, String file, byte[] bytes) {
        Set<Double> scales = new java.util.LinkedHashSet<>();
        try {
            scales.add(SvgCandidates.scaleOf(file, Files.readAllBytes(svg(design))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        scales.add(1.0);
        Held best = null;
        for (double scale : scales) {
            Held held = hold(design, file, bytes, scale);
            if (best == null || held.found.cost() < best.found.cost()) {
                best = held;
            }
        }
        return java.util.Objects.requireNonNull(best);
    }

    private static Held hold(Design design, String file, byte[] bytes, double scale) {
        try {
            Candidates now = BringReader.candidates(file, bytes, scale);
            if (now.shapes().size() > Redrawing.MOST_SHAPES) {
                throw new BringException(
                        file + " has " + now.shapes().size() + " outlines, at most " + Redrawing.MOST_SHAPES
                                + " can be held against a design",
                        "Leave decoration out of the drawing.");
            }
            Drawing old = design.figureDrawing();
            return new Held(old, now, Redrawing.of(old.outlines(), old.circles(), now), scale);
        } catch (DrawingException e) {
            throw new BringException(
                    String.valueOf(e.getMessage()), "Mend the drawing, save it and drop it here again.");
        }
    }

    /** An old drawing and a new one, with what belongs together. */
    static final class Held {

        private final Drawing old;
        private final Candidates now;
        private final Redrawing found;
        private final double scale;

        private Held(Drawing old, Candidates now, Redrawing found, double scale) {
            this.old = old;
            this.now = now;
            this.found = found;
            this.scale = scale;
        }

        /** With other pairs where the maker says so. */
        Held as(Map<String, String> parts, Map<String, String> points) {
            return new Held(old, now, found.as(old.outlines(), parts, points, now), scale);
        }

        Drawing old() {
            return old;
        }

        double scale() {
            return scale;
        }

        Redrawing found() {
            return found;
        }

        /** Whether the new file has every old id and stands where the old one stood: it can be kept as it is. */
        boolean isSameFile() {
            return scale == 1
                    && found.shift().length() < 1e-6
                    && found.parts().keySet().containsAll(old.outlines().keySet())
                    && found.parts().values().stream().allMatch(Redrawing.Part::byId)
                    && old.circles().keySet().stream()
                            .allMatch(id -> now.rounds().stream()
                                    .anyMatch(round -> round.id().equals(id)))
                    && found.points().values().stream().allMatch(Redrawing.Spot::byId);
        }

        Optional<Outline> outline(String key) {
            return now.shapes().stream()
                    .filter(shape -> shape.key().equals(key))
                    .map(shape -> shape.outline().moved(found.shift()))
                    .findFirst();
        }

        Optional<Point> round(String key) {
            return now.rounds().stream()
                    .filter(round -> round.key().equals(key))
                    .map(round -> round.circle().centre().plus(found.shift()))
                    .findFirst();
        }

        List<Candidates.Open> lines() {
            return now.lines();
        }

        Redrawn.RedrawnPart part(String name) {
            Outline was = old.outline(name).orElseThrow();
            Redrawing.Part part = found.parts().get(name);
            if (part == null) {
                return new Redrawn.RedrawnPart(
                        name, Redrawn.Change.GONE, "", "not found; it stays as it was", rings(was), null);
            }
            Outline is = outline(part.key()).orElseThrow();
            List<String> words = new ArrayList<>();
            Redrawn.Change change = Redrawn.Change.SAME;
            if (part.overlap() < SAME_SHAPE) {
                change = Redrawn.Change.RESHAPED;
                words.add(String.format(Locale.ROOT, "reshaped, %.0f %% the same", 100 * part.overlap()));
            }
            if (Math.abs(part.angle()) > SAME_ANGLE) {
                change = change == Redrawn.Change.SAME ? Redrawn.Change.TURNED : change;
                words.add(String.format(Locale.ROOT, "turned by %.0f°", Math.toDegrees(part.angle())));
            }
            if (part.shift().length() > SAME_PLACE) {
                change = change == Redrawn.Change.SAME ? Redrawn.Change.MOVED : change;
                words.add(String.format(
                        Locale.ROOT, "moved by %.1f mm", part.shift().length()));
            }
            return new Redrawn.RedrawnPart(
                    name,
                    change,
                    part.key(),
                    words.isEmpty() ? "as it was" : String.join(", ", words),
                    rings(was),
                    rings(is));
        }

        Redrawn.RedrawnPoint point(String name) {
            Point was = old.circle(name).map(Circle::centre).orElseThrow();
            Redrawing.Spot spot = found.points().get(name);
            if (spot == null) {
                return new Redrawn.RedrawnPoint(
                        name, Redrawn.Change.GONE, "", "not drawn; it goes with its part", Pair.of(was), Pair.of(was));
            }
            Point is = round(spot.key()).orElseThrow();
            boolean same = was.distance(is) <= SAME_PLACE;
            return new Redrawn.RedrawnPoint(
                    name,
                    same ? Redrawn.Change.SAME : Redrawn.Change.MOVED,
                    spot.key(),
                    same ? "as it was" : String.format(Locale.ROOT, "moved by %.1f mm", was.distance(is)),
                    Pair.of(was),
                    Pair.of(is));
        }

        List<Redrawn.RedrawnShape> added() {
            Set<String> taken =
                    found.parts().values().stream().map(Redrawing.Part::key).collect(Collectors.toSet());
            return now.shapes().stream()
                    .filter(shape -> !taken.contains(shape.key()))
                    .map(shape -> new Redrawn.RedrawnShape(
                            shape.key(), rings(shape.outline().moved(found.shift()))))
                    .toList();
        }

        /** Every circle of the new drawing, as a ring of its middle alone. */
        List<Redrawn.RedrawnShape> rounds() {
            return now.rounds().stream()
                    .map(round -> new Redrawn.RedrawnShape(
                            round.key(),
                            List.of(List.of(Pair.of(round.circle().centre().plus(found.shift()))))))
                    .toList();
        }

        private static List<List<Pair>> rings(Outline outline) {
            List<List<Pair>> rings = new ArrayList<>();
            rings.add(Pair.ring(outline.outer()));
            outline.holes().forEach(hole -> rings.add(Pair.ring(hole)));
            return rings;
        }
    }
}
