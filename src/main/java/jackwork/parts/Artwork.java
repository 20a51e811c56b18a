package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.PictureEntry;
import jackwork.design.Works;
import jackwork.geometry.Point;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What is printed for a design; nothing of it moves or weighs.
 *
 * @param coins that it takes, by their codes
 */
public record Artwork(List<PartPicture> pictures, List<String> coins) {

    /**
     * @param file its PNG
     * @param at the picture's lower left corner in the common frame
     * @param width of the whole picture, mm
     * @param bleed how far it is printed beyond the part's edge, mm
     */
    public record PartPicture(String part, Path file, Point at, double width, double bleed) {}

    static Artwork of(Design design) {
        List<PartPicture> pictures = new ArrayList<>();
        add(design, design.box(), design.folder().resolve(design.file().box()), pictures);
        add(design, design.figure(), design.folder().resolve(design.file().figure()), pictures);
        return new Artwork(List.copyOf(pictures), List.copyOf(design.file().coins()));
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
