package jackwork.parts;

import jackwork.design.ClothEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PictureEntry;
import jackwork.design.PointOf;
import jackwork.design.Works;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What is printed for a design; nothing of it moves or weighs. */
public record Artwork(List<PartPicture> pictures, List<Cloth> cloths) {

    /**
     * @param file its PNG
     * @param at the picture's lower left corner in the common frame
     * @param width of the whole picture, mm
     * @param bleed how far it is printed beyond the part's edge, mm
     */
    public record PartPicture(String part, Path file, Point at, double width, double bleed) {}

    /**
     * @param on the part that carries it, when the maker says so
     * @param outline once sewn, in the common frame
     * @param hem mm
     * @param grain direction of its threads, degrees
     * @param span absent when it hangs free or lies on one part
     */
    public record Cloth(
            String name,
            @Nullable String on,
            Outline outline,
            double hem,
            double grain,
            @Nullable Span span) {}

    /**
     * From one part to another.
     *
     * @param from as drawn, in the common frame
     * @param to likewise
     * @param length of cloth between the two, mm
     */
    public record Span(String fromPart, Point from, String toPart, Point to, double length) {}

    static Artwork of(Design design) {
        List<PartPicture> pictures = new ArrayList<>();
        add(design, design.box().works(), design.folder().resolve(design.file().box()), pictures);
        add(
                design,
                design.figure().works(),
                design.folder().resolve(design.file().figure()),
                pictures);
        List<Cloth> cloths = new ArrayList<>();
        design.figure().cloths().forEach((name, cloth) -> cloths.add(cloth(design, name, cloth)));
        return new Artwork(List.copyOf(pictures), List.copyOf(cloths));
    }

    private static Cloth cloth(Design design, String name, ClothEntry cloth) {
        Outline outline =
                Named.in(design.figureDrawing().outlines(), cloth.outline()).moved(design.figureShift());
        return new Cloth(name, cloth.on(), outline, cloth.hemOrUsual(), cloth.grainOrUsual(), span(design, cloth));
    }

    private static @Nullable Span span(Design design, ClothEntry cloth) {
        PointOf from = cloth.from();
        PointOf to = cloth.to();
        if (from == null || to == null) {
            return null;
        }
        Point start = design.inFigure(from.at(), "");
        Point end = design.inFigure(to.at(), "");
        Double length = cloth.length();
        return new Span(from.part(), start, to.part(), end, length == null ? start.distance(end) : length);
    }

    private static void add(Design design, Works works, Path worksFile, List<PartPicture> pictures) {
        for (Map.Entry<String, PictureEntry> entry : works.pictures().entrySet()) {
            PictureEntry picture = entry.getValue();
            pictures.add(new PartPicture(
                    entry.getKey(),
                    worksFile.resolveSibling(picture.file()).normalize(),
                    Places.at(design, works, picture.at(), ""),
                    picture.width(),
                    picture.bleedOrUsual()));
        }
    }
}
