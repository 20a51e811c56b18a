package jackwork.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Where things stand on a printed page: the title above, then the parts, then the check line, the
 * legend and the cautions. All mm, y up from the page's lower left corner.
 *
 * @param roomWidth what is left for parts
 * @param partsBottom lower edge of the room left for parts
 */
record PageLayout(
        double width,
        double height,
        double roomWidth,
        double roomHeight,
        double partsBottom,
        List<String> title,
        List<String> cautions) {

    /** Most printers leave 3 to 6 mm bare at the edges; common practice, no source. */
    static final double MARGIN = 10;

    static final double CHECK_LENGTH = 100;
    static final double TITLE_SIZE = 4.2;
    static final double TITLE_LINE = 5.6;
    static final double SMALL_SIZE = 2.7;
    static final double SMALL_LINE = 3.7;

    /** From the cautions up to the legend, on to the check line, and on to the parts. */
    static final double LEGEND_GAP = 2.5;

    static final double CHECK_RISE = 6;
    private static final double PARTS_RISE = 8;
    private static final double TITLE_GAP = 4;

    /** Kept beside the title for the page's number. */
    private static final double NUMBER_WIDTH = 22;

    /** Old readers take no page larger than 14,400 points of 1/72 inch a side, in mm (ISO 32000-1, annex C). */
    private static final double LARGEST = 5080;

    static PageLayout of(CutSheet sheet, PrintSetup setup, PdfText text) {
        String title = sheet.title();
        double sheetWidth = sheet.width();
        double sheetHeight = sheet.height();
        if (setup.paper().isEmpty()) {
            return fitted(title, sheetWidth, sheetHeight, setup.cautions(), text);
        }
        Paper paper = setup.paper().get();
        PageLayout upright = on(paper, title, setup.cautions(), text);
        PageLayout turned = on(paper.turned(), title, setup.cautions(), text);
        for (PageLayout layout : List.of(upright, turned)) {
            if (sheetWidth <= layout.roomWidth && sheetHeight <= layout.roomHeight) {
                return layout;
            }
        }
        throw new IllegalArgumentException(String.format(
                Locale.ROOT,
                "sheet \"%s\" is %.1f x %.1f mm, %s has room for %.1f x %.1f mm or, turned, %.1f x %.1f mm;"
                        + " take larger paper or print it in pieces",
                title,
                sheetWidth,
                sheetHeight,
                paper.name(),
                upright.roomWidth,
                upright.roomHeight,
                turned.roomWidth,
                turned.roomHeight));
    }

    /** What a paper leaves for parts. */
    static PageLayout on(Paper paper, String title, List<String> cautions, PdfText text) {
        double textWidth = paper.width() - 2 * MARGIN;
        if (textWidth < CHECK_LENGTH) {
            throw new IllegalArgumentException("paper " + paper.name() + " is " + paper.width()
                    + " mm wide; the check line needs at least " + (CHECK_LENGTH + 2 * MARGIN) + " mm");
        }
        List<String> titleLines = text.wrapped(TITLE_SIZE, textWidth - NUMBER_WIDTH, title);
        List<String> cautionLines = wrappedAll(cautions, textWidth, text);
        double below = below(cautionLines);
        double room = paper.height() - below - above(titleLines);
        return new PageLayout(paper.width(), paper.height(), textWidth, room, below, titleLines, cautionLines);
    }

    private static PageLayout fitted(
            String title, double sheetWidth, double sheetHeight, List<String> cautions, PdfText text) {
        double width = Math.max(sheetWidth, CHECK_LENGTH) + 2 * MARGIN;
        PageLayout unbounded = on(new Paper("", width, 2 * LARGEST), title, cautions, text);
        double height = sheetHeight + unbounded.partsBottom + above(unbounded.title);
        if (width > LARGEST || height > LARGEST) {
            throw new IllegalArgumentException("sheet \"" + title + "\" needs a page of " + width + " x " + height
                    + " mm; a PDF page is at most " + LARGEST + " mm a side");
        }
        return on(new Paper("", width, height), title, cautions, text);
    }

    /** Base line of the legend's words. */
    double legendBottom() {
        return MARGIN + cautions.size() * SMALL_LINE + LEGEND_GAP;
    }

    private static double below(List<String> cautionLines) {
        return MARGIN + cautionLines.size() * SMALL_LINE + LEGEND_GAP + CHECK_RISE + PARTS_RISE;
    }

    private static double above(List<String> titleLines) {
        return MARGIN + titleLines.size() * TITLE_LINE + TITLE_GAP;
    }

    private static List<String> wrappedAll(List<String> cautions, double width, PdfText text) {
        List<String> lines = new ArrayList<>();
        cautions.forEach(caution -> lines.addAll(text.wrapped(SMALL_SIZE, width, caution)));
        return lines;
    }
}
