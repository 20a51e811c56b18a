package jackwork.make;

import jackwork.drawing.ArtworkFigure;
import jackwork.drawing.ArtworkPdf;
import jackwork.drawing.Paper;
import jackwork.drawing.PictureReader;
import jackwork.geometry.Outline;
import jackwork.parts.Artwork;
import jackwork.parts.Assembly;
import jackwork.parts.Hole;
import jackwork.parts.Part;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pictures of a design's parts, to print in true size, cut out and glue on. */
public final class ArtworkPages {

    /** Smaller glue areas are not worth a mask, mm². */
    private static final double LEAST_BARE = 1;

    private static final List<String> WORDS = List.of(
            "Glue the picture on before or after cutting; prick through the crosses and lay them on the part's holes.");

    private ArtworkPages() {}

    /**
     * PDF; empty when no part has a picture.
     *
     * @throws jackwork.drawing.PictureException when a picture cannot be read
     */
    public static Optional<byte[]> pdf(Assembly assembly, Paper paper) throws IOException {
        List<ArtworkFigure> figures = figures(assembly);
        return figures.isEmpty()
                ? Optional.empty()
                : Optional.of(ArtworkPdf.write(assembly.name(), figures, paper, WORDS));
    }

    static List<ArtworkFigure> figures(Assembly assembly) throws IOException {
        List<ArtworkFigure> figures = new ArrayList<>();
        for (Artwork.PartPicture picture : assembly.artwork().pictures()) {
            Part part = assembly.parts().stream()
                    .filter(one -> one.name().equals(picture.part()))
                    .findFirst()
                    .orElseThrow();
            figures.add(new ArtworkFigure(
                    part.name(),
                    PictureReader.read(picture.file()),
                    picture.at(),
                    picture.width(),
                    part.drawn(),
                    picture.bleed(),
                    part.holes().stream().map(Hole::circle).toList(),
                    bare(assembly, part)));
        }
        return figures;
    }

    /** Where the parts of its own body that lie on its front are glued to it. */
    static List<Outline> bare(Assembly assembly, Part part) {
        List<Outline> areas = new ArrayList<>();
        for (Part other : assembly.body(assembly.bodyOf(part.name())).parts()) {
            if (other.layer() == part.layer() + 1) {
                other.drawn().shared(part.drawn()).stream()
                        .filter(area -> area.area() >= LEAST_BARE)
                        .forEach(areas::add);
            }
        }
        return areas;
    }
}
