package jackwork.app.bring;

import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import jackwork.design.Design;
import jackwork.design.DesignFiles;
import jackwork.drawing.Candidates;
import jackwork.drawing.Drawing;
import jackwork.drawing.DrawingException;
import jackwork.drawing.Redrawing;
import jackwork.drawing.SvgCandidates;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** A design's drawing drawn again: what became of each part and point, and the new texts once the maker agrees. */
final class BringRedraw {

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
        RedrawHeld held = scale > 0 ? hold(design, file, bytes, scale) : likeliest(design, file, bytes);
        return new Redrawn(
                files.version(),
                held.scale(),
                held.old().outlines().keySet().stream().map(held::part).toList(),
                held.old().circles().keySet().stream()
                        .filter(point -> !point.equals("origin"))
                        .map(held::point)
                        .toList(),
                held.added(),
                workbench.sharing(id, files.figure()));
    }

    /** @throws BringException when the drawing cannot be used so; nothing is changed then */
    void accept(String id, Redrawn.Redraw plan) {
        Design design = workbench.design(id);
        byte[] bytes = plan.text().getBytes(StandardCharsets.UTF_8);
        RedrawHeld held = hold(design, plan.file(), bytes, plan.scale()).as(plan.parts(), plan.points());
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
                .resolveSibling(design.figure().works().drawing())
                .normalize();
    }

    private static RedrawHeld likeliest(Design design, String file, byte[] bytes) {
        Set<Double> scales = new java.util.LinkedHashSet<>();
        try {
            scales.add(SvgCandidates.scaleOf(file, Files.readAllBytes(svg(design))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        scales.add(1.0);
        RedrawHeld best = null;
        for (double scale : scales) {
            RedrawHeld held = hold(design, file, bytes, scale);
            if (best == null || held.found().cost() < best.found().cost()) {
                best = held;
            }
        }
        return java.util.Objects.requireNonNull(best);
    }

    private static RedrawHeld hold(Design design, String file, byte[] bytes, double scale) {
        try {
            Candidates now = BringReader.candidates(file, bytes, scale);
            if (now.shapes().size() > Redrawing.MOST_SHAPES) {
                throw new BringException(
                        file + " has " + now.shapes().size() + " outlines, at most " + Redrawing.MOST_SHAPES
                                + " can be held against a design",
                        "Leave decoration out of the drawing.");
            }
            Drawing old = design.figureDrawing();
            return new RedrawHeld(old, now, Redrawing.of(old.outlines(), old.circles(), now), scale);
        } catch (DrawingException e) {
            throw new BringException(
                    String.valueOf(e.getMessage()), "Mend the drawing, save it and drop it here again.");
        }
    }
}
