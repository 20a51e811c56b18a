package jackwork.make;

import jackwork.drawing.CutSheet;
import jackwork.drawing.Paper;
import jackwork.drawing.PdfWriter;
import jackwork.drawing.PrintSetup;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What comes out of the paper printer in true size; a new one is one line here and one in {@link PackWriter}. */
public enum PaperFile {
    ARTWORK("artwork.pdf", "the pictures of its parts, true size, to cut out"),
    CLOTH("cloth.pdf", "patterns to cut cloth by, with their hems"),
    LABEL("label.pdf", "for underneath the box"),
    JIGS("jigs.pdf", "in true size: rods and weights of every stack");

    private final String file;
    private final String what;

    PaperFile(String file, String what) {
        this.file = file;
        this.what = what;
    }

    public String file() {
        return file;
    }

    /** What it is for, for people. */
    public String what() {
        return what;
    }

    /**
     * PDF; empty when a design has none of it.
     *
     * @throws jackwork.drawing.PictureException when a picture cannot be read
     */
    public Optional<byte[]> pdf(Makings makings, Paper paper) throws IOException {
        return switch (this) {
            case ARTWORK -> ArtworkPages.pdf(makings.assembly(), paper);
            case CLOTH -> ClothPages.pdf(makings.assembly(), paper);
            case LABEL ->
                Optional.of(BoxLabel.pdf(makings.assembly(), makings.subject().coins(), paper));
            case JIGS -> jigs(makings);
        };
    }

    private static Optional<byte[]> jigs(Makings makings) {
        List<CutSheet> jigs = Jigs.of(makings.assembly());
        return jigs == null
                ? Optional.empty()
                : Optional.of(PdfWriter.write(jigs, PrintSetup.asLargeAsNeeded(Cautions.FOR_THE_WORKSHOP)));
    }
}
