package jackwork.drawing;

import java.util.List;

/** Pictures for parts as PDF pages in true size. The same figures give the same bytes. */
public final class ArtworkPdf {

    private ArtworkPdf() {}

    /** @param design its name, before each page's title */
    public static byte[] write(String design, List<ArtworkFigure> figures, Paper paper, List<String> cautions) {
        return TiledPdf.write(design, figures.stream().map(PicturedPart::new).toList(), paper, cautions);
    }
}
