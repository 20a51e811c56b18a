package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.util.List;

/**
 * A piece of cloth to be cut; mm, y up.
 *
 * @param seam its outline once sewn
 * @param hem what is folded or sewn beyond the seam
 * @param grain direction of the cloth's threads, degrees counter-clockwise from the right
 * @param ties where it is fixed to parts; only those on the piece are kept
 */
public record ClothPattern(String name, Outline seam, double hem, double grain, List<Point> ties)
        implements TiledFigure {

    private static final Pens.Pen CUT = new Pens.Pen(0x0b4f54, 0.3);
    private static final Pens.Pen SEAM = new Pens.Pen(0x7d2e68, 0.25);
    private static final Pens.Pen TIE = new Pens.Pen(0xb9770e, 0.25);
    private static final double HEAD = 3;

    /** What is fixed beside the piece, by a ribbon or because it is drawn elsewhere, has no place on it. */
    public ClothPattern {
        ties = ties.stream()
                .filter(tie -> seam.contains(tie) || seam.distanceToEdge(tie) <= hem)
                .toList();
    }

    /** PDF pages in true size; the same pieces give the same bytes. */
    public static byte[] write(String design, List<ClothPattern> pieces, Paper paper, List<String> cautions) {
        return TiledPdf.write(design, pieces, paper, cautions);
    }

    @Override
    public Outline shown() {
        return seam.offset(hem);
    }

    @Override
    public List<String> notes() {
        return List.of();
    }

    @Override
    public void draw(PdfFile file, PdfCanvas canvas) throws IOException {
        canvas.pen(CUT);
        canvas.region(shown());
        canvas.pen(SEAM);
        canvas.dashes(3, 2);
        canvas.region(seam);
        canvas.dashes();
        canvas.pen(TIE);
        for (Point tie : ties) {
            canvas.cross(tie, 3);
        }
        arrow(canvas);
    }

    /** Along the threads, both ends pointed, through the middle. */
    private void arrow(PdfCanvas canvas) throws IOException {
        Bounds bounds = seam.bounds();
        double half = Math.min(30, 0.25 * Math.min(bounds.width(), bounds.height()));
        Point along = new Point(1, 0).turned(Math.toRadians(grain));
        Point middle = seam.centroid();
        canvas.pen(PdfFile.INK);
        canvas.draw(new CutShape.Line(List.of(middle.minus(along.times(half)), middle.plus(along.times(half)))));
        for (int end : new int[] {-1, 1}) {
            Point tip = middle.plus(along.times(end * half));
            Point back = along.times(-end * Math.min(HEAD, half / 2));
            canvas.draw(new CutShape.Line(List.of(tip.plus(back.turned(0.4)), tip, tip.plus(back.turned(-0.4)))));
        }
    }

    @Override
    public double legend(PdfFile file, PdfCanvas canvas, double y) throws IOException {
        double x = file.legend(canvas, PageLayout.MARGIN, y, CUT, "cut");
        canvas.dashes(3, 2);
        x = file.legend(canvas, x, y, SEAM, "seam or fold");
        canvas.dashes();
        if (!ties.isEmpty()) {
            canvas.pen(TIE);
            canvas.cross(new Point(x + 3, y + 0.9), 1.6);
            x = file.legendWords(canvas, x, y, "fixed to a part");
        }
        return file.legend(canvas, x, y, PdfFile.INK, "arrow: along the threads");
    }
}
