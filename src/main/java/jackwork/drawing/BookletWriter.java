package jackwork.drawing;

import jackwork.geometry.Bounds;
import jackwork.geometry.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/** Words and pictures on pages, one section after the other: for reading, so pictures are as large as there is room. */
public final class BookletWriter {

    private static final double MARGIN = 16;
    private static final double TITLE = 7;
    private static final double HEADING = 4.6;
    private static final double BODY = 3.6;
    private static final double LINE = 5.2;
    private static final double SMALL = 2.8;
    private static final double BETWEEN = 7;
    private static final double HIGHEST_PICTURE = 70;
    /** Enlarged no more than this, or small parts would look large. */
    private static final double MOST_ENLARGED = 2.0;

    private static final Pens.Pen INK = new Pens.Pen(0x222222, 0.2);
    private static final Pens.Pen FAINT = new Pens.Pen(0x8a8f94, 0.12);
    private static final Pens.Pen RIM = new Pens.Pen(0x3b3b3b, 0.15);

    /** Any fixed number, so that the same booklet gives the same bytes. */
    private static final long DOCUMENT_ID = 101;

    /**
     * @param rings of the region, holes by the even-odd rule, mm
     * @param fill colour 0xRRGGBB
     * @param faint whether it only shows where the others go
     */
    public record Shape(List<List<Point>> rings, int fill, boolean faint) {}

    /** A short word beside a point of the picture. */
    public record Note(Point at, String text) {}

    public record Picture(List<Shape> shapes, List<Note> notes) {}

    /**
     * @param heading of the section
     * @param aside at the right of the heading
     * @param words paragraphs; one that begins with "- " is an entry of a list
     * @param picture above the words; none when null
     */
    public record Section(
            String heading,
            String aside,
            List<String> words,
            @Nullable Picture picture) {}

    private final PDDocument document;
    private final PdfText text;
    private final Paper paper;
    private final String foot;
    private @Nullable PdfCanvas canvas;
    private double y;
    private int pages;

    private BookletWriter(PDDocument document, Paper paper, String foot) {
        this.document = document;
        this.text = new PdfText(document);
        this.paper = paper;
        this.foot = foot;
    }

    /** @param foot at the bottom of every page */
    public static byte[] write(Paper paper, String title, String foot, List<Section> sections) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.setVersion(1.6f);
            document.setDocumentId(DOCUMENT_ID);
            BookletWriter writer = new BookletWriter(document, paper, foot);
            writer.title(title);
            for (Section section : sections) {
                writer.section(section);
            }
            writer.endPage();
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    private double width() {
        return paper.width() - 2 * MARGIN;
    }

    private PdfCanvas page() throws IOException {
        PdfCanvas open = canvas;
        if (open == null) {
            open = new PdfCanvas(document, text, paper.width(), paper.height());
            canvas = open;
            pages++;
            y = paper.height() - MARGIN;
            open.pen(INK);
            List<String> lines = text.wrapped(SMALL, width() - 15, foot);
            for (int i = 0; i < lines.size(); i++) {
                open.write(SMALL, new Point(MARGIN, MARGIN - 4 + (lines.size() - 1 - i) * SMALL * 1.3), lines.get(i));
            }
            String number = Integer.toString(pages);
            open.write(SMALL, new Point(paper.width() - MARGIN - text.width(SMALL, number), MARGIN - 4), number);
        }
        return open;
    }

    private void endPage() throws IOException {
        if (canvas != null) {
            canvas.close();
            canvas = null;
        }
    }

    private double bottom() {
        return MARGIN + 6;
    }

    private void need(double height) throws IOException {
        page();
        if (y - height < bottom()) {
            endPage();
            page();
        }
    }

    private void title(String title) throws IOException {
        for (String line : text.wrapped(TITLE, width(), title)) {
            page().write(TITLE, new Point(MARGIN, y - TITLE), line);
            y -= TITLE * 1.4;
        }
        y -= BETWEEN / 2;
    }

    private void section(Section section) throws IOException {
        List<String> lines = new ArrayList<>();
        section.words().forEach(words -> lines.addAll(paragraph(words)));
        double scale = section.picture() == null ? 0 : scale(section.picture());
        double picture =
                section.picture() == null ? 0 : bounds(section.picture()).height() * scale + 6;
        // A heading keeps its picture and the first lines with it; a short section stays whole.
        need(HEADING * 1.8 + picture + LINE * Math.min(lines.size(), 6));
        PdfCanvas on = page();
        on.pen(INK);
        on.write(HEADING, new Point(MARGIN, y - HEADING), section.heading());
        double right = paper.width() - MARGIN - text.width(SMALL, section.aside());
        on.write(SMALL, new Point(right, y - HEADING), section.aside());
        y -= HEADING * 1.8;
        if (section.picture() != null) {
            picture(section.picture(), scale);
            y -= picture;
        }
        for (String line : lines) {
            need(LINE);
            page().pen(INK);
            page().write(BODY, new Point(MARGIN + (line.startsWith("  ") ? 3 : 0), y - BODY), line.stripLeading());
            y -= LINE;
        }
        y -= BETWEEN;
    }

    private List<String> paragraph(String words) {
        if (!words.startsWith("- ")) {
            return text.wrapped(BODY, width(), words);
        }
        List<String> lines = text.wrapped(BODY, width() - 6, words.substring(2));
        List<String> entry = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            entry.add((i == 0 ? "– " : "  ") + lines.get(i));
        }
        return entry;
    }

    static Bounds bounds(Picture picture) {
        double[] b = {1e9, 1e9, -1e9, -1e9};
        for (Shape shape : picture.shapes()) {
            for (List<Point> ring : shape.rings()) {
                for (Point p : ring) {
                    b[0] = Math.min(b[0], p.x());
                    b[1] = Math.min(b[1], p.y());
                    b[2] = Math.max(b[2], p.x());
                    b[3] = Math.max(b[3], p.y());
                }
            }
        }
        return new Bounds(b[0], b[1], b[2], b[3]);
    }

    private double scale(Picture picture) {
        Bounds b = bounds(picture);
        return Math.min(MOST_ENLARGED, Math.min(width() / b.width(), HIGHEST_PICTURE / b.height()));
    }

    private void picture(Picture picture, double scale) throws IOException {
        Bounds b = bounds(picture);
        double left = MARGIN + (width() - b.width() * scale) / 2;
        Point origin = new Point(left - b.minX() * scale, y - b.height() * scale - b.minY() * scale);
        PdfCanvas on = page();
        for (Shape shape : picture.shapes()) {
            on.pen(shape.faint() ? FAINT : RIM);
            List<List<Point>> rings = shape.rings().stream()
                    .map(ring ->
                            ring.stream().map(p -> origin.plus(p.times(scale))).toList())
                    .toList();
            on.fill(rings, shape.fill());
        }
        on.pen(INK);
        for (Note note : picture.notes()) {
            Point at = origin.plus(note.at().times(scale));
            on.write(SMALL, at.minus(new Point(text.width(SMALL, note.text()) / 2, SMALL / 3)), note.text());
        }
    }
}
