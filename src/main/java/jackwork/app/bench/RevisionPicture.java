package jackwork.app.bench;

import jackwork.app.core.ChangedPart;
import jackwork.app.core.DesignPicture;
import jackwork.design.Design;
import jackwork.geometry.Bounds;
import jackwork.parts.Assembler;
import jackwork.parts.Part;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One of two states of a design, in the same frame and at the same scale as the other: what differs has a thick rim and its
 * number, and a dashed rim where the other state has it.
 */
final class RevisionPicture {

    private static final String RIM = "#b8480f";
    /** The height of a mark's numeral, as a share of the picture's longer side. */
    private static final double NUMERAL = 0.045;

    private RevisionPicture() {}

    /**
     * @param shown the state that is drawn
     * @param before whether it is the former of the two
     */
    static String svg(Design shown, Design other, boolean before) {
        List<Part> parts = Assembler.assemble(shown).parts();
        List<Part> others = Assembler.assemble(other).parts();
        List<ChangedPart> changed = before ? ChangedPart.between(parts, others) : ChangedPart.between(others, parts);
        Bounds frame = DesignPicture.bounds(parts).union(DesignPicture.bounds(others));
        StringBuilder svg = new StringBuilder(DesignPicture.frame(frame)).append(DesignPicture.inside(parts));
        double size = NUMERAL * Math.max(frame.width(), frame.height());
        Map<String, Part> here = ChangedPart.byName(parts);
        Map<String, Part> there = ChangedPart.byName(others);
        svg.append("<g transform=\"scale(1 -1)\" fill=\"none\" stroke-linejoin=\"round\">");
        for (ChangedPart change : changed) {
            rim(svg, here.get(change.part()), RIM, "stroke-width=\"1.8\"");
            rim(svg, there.get(change.part()), "#2c2620", "stroke-width=\".8\" stroke-dasharray=\"2.5 2\"");
        }
        svg.append("</g>");
        for (ChangedPart change : changed) {
            Part part = here.containsKey(change.part()) ? here.get(change.part()) : there.get(change.part());
            if (part != null) {
                mark(svg, change.mark(), part.drawn().bounds(), size);
            }
        }
        return svg.append("</svg>").toString();
    }

    private static void rim(StringBuilder svg, @Nullable Part part, String colour, String how) {
        if (part != null) {
            svg.append("<path stroke=\"").append(colour).append("\" ").append(how);
            svg.append(" d=\"").append(DesignPicture.path(part)).append("\"/>");
        }
    }

    private static void mark(StringBuilder svg, int number, Bounds of, double size) {
        double x = of.centre().x();
        double y = -of.centre().y();
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" fill=\"#fdfaf3\" stroke=\"%s\" stroke-width=\"%.2f\"/>"
                        + "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" font-family=\"serif\""
                        + " text-anchor=\"middle\" fill=\"#2c2620\">%d</text>",
                x,
                y,
                0.72 * size,
                RIM,
                0.12 * size,
                x,
                y + 0.35 * size,
                size,
                number));
    }
}
