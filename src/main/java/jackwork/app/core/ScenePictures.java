package jackwork.app.core;

import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Pair;
import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import jackwork.parts.Artwork;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Printed pictures and cloth for the page's drawing. */
final class ScenePictures {

    private ScenePictures() {}

    /** Those that can be read; the pack says what is wrong with the others. */
    static List<Scene.Picture> of(Assembly assembly) {
        List<Scene.Picture> pictures = new ArrayList<>();
        for (Artwork.PartPicture picture : assembly.artwork().pictures()) {
            try {
                pictures.add(new Scene.Picture(
                        picture.part(),
                        Pair.of(picture.at()),
                        picture.width(),
                        picture.width() * PictureReader.heightByWidth(picture.file()),
                        state(picture.file())));
            } catch (IOException | PictureException e) {
                // Left out: a picture that is missing keeps nobody from pulling the lever.
            }
        }
        return pictures;
    }

    private static String state(Path file) throws IOException {
        return Long.toHexString(31 * Files.getLastModifiedTime(file).toMillis() + Files.size(file));
    }

    /** Each on the part that carries it, else on the one that it is sewn to first; one that hangs on none is left out. */
    static List<Scene.Cloth> cloths(Assembly assembly) {
        List<Scene.Cloth> cloths = new ArrayList<>();
        for (Artwork.Cloth cloth : assembly.artwork().cloths()) {
            Artwork.Span span = cloth.span();
            String on = cloth.on() != null || span == null ? cloth.on() : span.fromPart();
            for (Part part : assembly.parts()) {
                if (part.name().equals(on)) {
                    cloths.add(new Scene.Cloth(
                            cloth.name(),
                            assembly.body(assembly.bodyOf(part.name())).name(),
                            part.layer(),
                            Pair.ring(cloth.outline().outer())));
                }
            }
        }
        return cloths;
    }

    /**
     * The file of a part's picture.
     *
     * @throws BadRequestException when the part has none
     */
    static byte[] bytes(Assembly assembly, String part) throws IOException {
        for (Artwork.PartPicture picture : assembly.artwork().pictures()) {
            if (picture.part().equals(part)) {
                PictureReader.checkHeader(picture.file());
                return Files.readAllBytes(picture.file());
            }
        }
        throw new BadRequestException("read the part \"" + part + "\", which has no picture");
    }
}
