package jackwork.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Walks the visible elements with their transforms, follows {@code use}, and keeps every shape that has an id, or every
 * shape there is.
 */
final class SvgWalk {

    /**
     * A shape as drawn.
     *
     * @param by the element that put it there: itself, or the outermost {@code use}
     * @param borrowed drawn by a copy under the id of what it copies
     */
    record Drawn(SvgElement by, boolean borrowed, List<Contour> contours) {}

    /** A shape as drawn, with an id or without one, in the order of painting. */
    record Painted(SvgElement by, String id, SvgPaint paint, List<Contour> contours) {}

    /**
     * What is being copied.
     *
     * @param use the outermost one, which stands in the drawing itself
     * @param name what a single copied shape is called; empty: as the shape itself is
     * @param own whether that name can occur only once
     */
    private record Copy(SvgElement use, String name, boolean own) {

        static Copy by(SvgElement use, @Nullable Copy outer) {
            if (outer == null) {
                return new Copy(use, use.id(), use.has("id"));
            }
            return outer.name.isEmpty() ? new Copy(outer.use, use.id(), false) : outer;
        }

        /** Inside a copied group shapes keep their own names. */
        Copy inside() {
            return new Copy(use, "", false);
        }
    }

    private static final Set<String> GROUPS = Set.of("svg", "g", "a", "switch");

    private final Map<String, SvgElement> byId = new HashMap<>();
    private final Map<String, Drawn> drawn = new LinkedHashMap<>();
    private final Budget budget = new Budget();
    private final List<Painted> painted = new ArrayList<>();
    /** Whether shapes are kept that have no id, or one that stands elsewhere too. */
    private final boolean all;

    private SvgPaint paint = SvgPaint.USUAL;

    private SvgWalk(boolean all) {
        this.all = all;
    }

    /** Every shape there is; ids that stand twice are the maker's editor's affair. */
    static List<Painted> painted(SvgElement root, Viewport page) {
        SvgWalk walk = new SvgWalk(true);
        walk.index(root);
        walk.paint = SvgPaint.USUAL.inside(root);
        walk.visitChildren(root, page, null, 1);
        return walk.painted;
    }

    static Map<String, Drawn> drawn(SvgElement root, Viewport page) {
        SvgWalk walk = new SvgWalk(false);
        walk.index(root);
        walk.visitChildren(root, page, null, 1);
        return walk.drawn;
    }

    private void index(SvgElement element) {
        boolean understood = BasicShapes.draws(element)
                || GROUPS.contains(element.name())
                || Set.of("use", "symbol").contains(element.name());
        if (understood && element.has("id")) {
            SvgElement first = byId.putIfAbsent(element.id(), element);
            if (first != null && !all) {
                throw element.problem("this id already stands in line " + first.line()
                        + "; every id may stand once, rename one of the two");
            }
        }
        element.children().forEach(this::index);
    }

    private void visitChildren(SvgElement group, Viewport viewport, @Nullable Copy copy, int depth) {
        Copy inside = copy == null ? null : copy.inside();
        for (SvgElement child : group.children()) {
            if (!child.hidden()) {
                visit(child, viewport, inside, depth + 1);
            }
        }
    }

    private void visit(SvgElement element, Viewport viewport, @Nullable Copy copy, int depth) {
        budget.spendVisit(element);
        if (depth > SvgParser.DEEPEST) {
            throw (copy == null ? element : copy.use())
                    .problem("copies nest deeper than " + SvgParser.DEEPEST
                            + " elements, or in a circle; a <use> may not copy what holds it");
        }
        SvgPaint around = paint;
        paint = around.inside(element);
        follow(element, viewport, copy, depth);
        paint = around;
    }

    private void follow(SvgElement element, Viewport viewport, @Nullable Copy copy, int depth) {
        if (BasicShapes.draws(element)) {
            keep(element, viewport, copy);
        } else if (element.name().equals("use")) {
            copy(element, viewport.inner(TransformList.of(element)), Copy.by(element, copy), depth);
        } else if (GROUPS.contains(element.name())) {
            Viewport inner = viewport.inner(TransformList.of(element));
            Viewport within = element.name().equals("svg") ? inner.nested(element, element) : inner;
            visitChildren(element, within, copy, depth);
        }
    }

    private void copy(SvgElement use, Viewport viewport, Copy copy, int depth) {
        String link = use.attribute("href");
        if (!link.startsWith("#")) {
            // Another file's shape: nothing is ever fetched.
            return;
        }
        SvgElement copied = byId.get(link.substring(1));
        if (copied == null) {
            throw use.problem("copies \"" + link + "\", which is no shape or group of this file;"
                    + " mend the link or delete this <use>");
        }
        double x = SvgLength.of(use, "x", 0, viewport.width());
        double y = SvgLength.of(use, "y", 0, viewport.height());
        Viewport moved = viewport.inner(Affine.translation(x, y));
        if (copied.name().equals("symbol")) {
            Viewport within = copied.has("viewBox") ? moved.nested(copied, use) : moved;
            visitChildren(copied, within, copy, depth + 1);
        } else {
            visit(copied, moved, copy, depth + 1);
        }
    }

    private void keep(SvgElement element, Viewport viewport, @Nullable Copy copy) {
        String id = copy != null && !copy.name().isEmpty() ? copy.name() : element.id();
        boolean borrowed = copy != null && !copy.own();
        SvgElement by = copy == null ? element : copy.use();
        if (all) {
            Viewport inner = viewport.inner(TransformList.of(element));
            painted.add(new Painted(by, id, paint, BasicShapes.contours(element, inner, budget)));
            return;
        }
        Drawn before = drawn.get(id);
        if (id.isEmpty() || (before != null && borrowed && !before.borrowed())) {
            return;
        }
        if (before != null && borrowed) {
            throw by.problem("draws \"" + id + "\" once more, after line "
                    + before.by().line() + "; give each <use> of a shape an id of its own");
        }
        Viewport own = viewport.inner(TransformList.of(element));
        drawn.put(id, new Drawn(by, borrowed, BasicShapes.contours(element, own, budget)));
    }
}
