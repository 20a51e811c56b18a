package jackwork.drawing;

import jackwork.geometry.Point;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** A card to go with a piece, as a PDF page in true size: a title, words, lines to fill in. Same words, same bytes. */
public final class LabelPdf {

    /** mm. */
    private static final double WIDTH = 90;

    private static final double PADDING = 5;
    private static final double LINE = 5;
    private static final double SIZE = 3.4;
    private static final double TITLE_LINE = 9;
    private static final double TITLE_SIZE = 6.5;
    private static final double FILL_LINE = 8;
    private static final Pens.Pen CUT = new Pens.Pen(0x0b4f54, 0.15);
    private static final Pens.Pen RULE = new Pens.Pen(0x7b8794, 0.2);

    /**
     * A line of the card, such as "maker".
     *
     * @param value empty: a line to write on
     */
    public record Field(String name, String value) {}

    private LabelPdf() {}

    /**
     * @param words each a paragraph, beneath the title
     * @param small at the card's foot
     */
    public static byte[] write(String title, List<String> words, List<Field> fields, String small, Paper paper) {
        try (PdfFile file = new PdfFile()) {
            PageLayout layout = PageLayout.on(paper, title + ": label", List.of(), file.text());
            try (PdfCanvas canvas = file.page(layout, "page 1 of 1")) {
                file.legend(canvas, PageLayout.MARGIN, layout.legendBottom(), CUT, "edge of the label");
                canvas.origin(new Point(PageLayout.MARGIN, layout.partsBottom() + layout.roomHeight()));
                card(file.text(), canvas, title, words, fields, small);
            }
            return file.bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("writing a PDF to memory failed", e);
        }
    }

    /** Downwards from the origin. */
    private static void card(
            PdfText text, PdfCanvas canvas, String title, List<String> words, List<Field> fields, String small)
            throws IOException {
        double within = WIDTH - 2 * PADDING;
        double y = -PADDING + 1;
        canvas.pen(PdfFile.INK);
        for (String line : text.wrapped(TITLE_SIZE, within, title)) {
            y -= TITLE_LINE;
            canvas.write(TITLE_SIZE, new Point(PADDING, y + 2.5), line);
        }
        for (String paragraph : words) {
            for (String line : text.wrapped(SIZE, within, paragraph)) {
                y -= LINE;
                canvas.write(SIZE, new Point(PADDING, y + 1.2), line);
            }
        }
        for (Field field : fields) {
            y -= FILL_LINE;
            field(text, canvas, field, y);
        }
        y -= 3;
        canvas.pen(PdfFile.INK);
        for (String line : text.wrapped(PageLayout.SMALL_SIZE, within, small)) {
            y -= PageLayout.SMALL_LINE;
            canvas.write(PageLayout.SMALL_SIZE, new Point(PADDING, y + 1), line);
        }
        y -= PADDING - 1;
        canvas.pen(CUT);
        canvas.draw(
                new CutShape.Ring(List.of(new Point(0, y), new Point(WIDTH, y), new Point(WIDTH, 0), new Point(0, 0))));
    }

    private static void field(PdfText text, PdfCanvas canvas, Field field, double y) throws IOException {
        canvas.pen(PdfFile.INK);
        canvas.write(SIZE, new Point(PADDING, y + 1.2), field.name());
        double from = PADDING + 18;
        if (field.value().isEmpty()) {
            canvas.pen(RULE);
            canvas.draw(new CutShape.Line(List.of(new Point(from, y + 0.8), new Point(WIDTH - PADDING, y + 0.8))));
        } else {
            double room = WIDTH - PADDING - from;
            double size = Math.min(SIZE, SIZE * room / text.width(SIZE, field.value()));
            canvas.write(size, new Point(from, y + 1.2), field.value());
        }
    }
}
