package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.drawing.DrawingException;
import jackwork.drawing.SvgReader;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A box by itself, for a figure that is still to be made.
 *
 * @param id its file from the workshop's folder, with slashes
 * @param mounts where figures stand on it, by name; mm, the box's frame
 * @param pivot where its lever turns
 * @param press where the finger presses
 */
public record BoxDrawn(String id, BoxFile box, Drawing drawing, Map<String, Point> mounts, Point pivot, Point press) {

    private static final String FILE = "box.yaml";
    /** The workshop's boxes by name of their files; those that cannot be read are left out. */
    public static List<BoxDrawn> list(Path workshop) throws IOException {
        List<BoxDrawn> boxes = new ArrayList<>();
        for (Path file : DesignFolders.files(workshop, FILE)) {
            read(workshop, file).ifPresent(boxes::add);
        }
        return List.copyOf(boxes);
    }

    private static Optional<BoxDrawn> read(Path workshop, Path file) {
        String id = workshop.relativize(file).toString().replace('\\', '/');
        try {
            List<Problem> problems = new ArrayList<>();
            YamlFile yaml = YamlFile.read(file, problems);
            BoxFile box = new Binder(yaml).bind(BoxFile.class);
            YamlFile.requireNone(problems);
            if (box == null) {
                return Optional.empty();
            }
            Path svg = file.resolveSibling(box.works().drawing()).normalize();
            if (!svg.toRealPath().startsWith(workshop.toRealPath())) {
                return Optional.empty();
            }
            return Optional.of(of(id, box, SvgReader.read(box.works().drawing(), Files.readAllBytes(svg))));
        } catch (DesignException | DrawingException | IOException | IllegalStateException e) {
            // Said in full when a design on it is opened; here it is only not offered.
            return Optional.empty();
        }
    }

    private static BoxDrawn of(String id, BoxFile box, Drawing drawing) {
        Map<String, Point> mounts = new TreeMap<>();
        box.works().mounts().forEach((name, mount) -> mounts.put(name, References.point(drawing, mount.at(), name)));
        PinEntry pin = Named.in(box.works().pins(), box.lever().pin());
        Named.in(drawing.outlines(), drawn(box, box.lever().part()));
        return new BoxDrawn(
                id,
                box,
                drawing,
                mounts,
                References.point(drawing, pin.at(), box.lever().pin()),
                References.point(drawing, box.lever().press(), ""));
    }

    /** The id of a part's outline. */
    public static String drawn(BoxFile box, String part) {
        String drawn = Named.in(box.works().parts(), part).drawn();
        return drawn == null ? part : drawn;
    }
}
