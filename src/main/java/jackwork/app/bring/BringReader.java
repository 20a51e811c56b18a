package jackwork.app.bring;

import jackwork.app.wire.Pair;
import jackwork.drawing.Candidates;
import jackwork.drawing.DrawingException;
import jackwork.drawing.Picture;
import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import jackwork.drawing.PictureTrace;
import jackwork.drawing.SvgCandidates;
import jackwork.geometry.Circle;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what was dropped on the page: any SVG drawing, or a picture (PNG) whose edge is followed. */
final class BringReader {

    /** The most that is read of a file: a drawing's 20 MB, a picture's 64 MiB, are refused by their own readers. */
    static final int MOST_BYTES = 65 << 20;

    private static final double LEAST_SCALE = 1e-4;
    private static final double MOST_SCALE = 1e4;
    /** Pixels an inch of a picture that does not say. */
    private static final double USUAL_DPI = 96;

    /** Behind the first layer there is room for what the program makes: a post. */
    private static final int FIRST_LAYER = 2;

    private BringReader() {}

    /**
     * @param scale how much larger than the file says everything is
     * @throws BringException when it cannot be read
     */
    static Brought read(String file, byte[] bytes, double scale) {
        if (!(scale >= LEAST_SCALE && scale <= MOST_SCALE)) {
            throw new BringException(
                    "the size asked for makes the drawing " + scale + " times as large",
                    "Type a length in millimetres.");
        }
        try {
            return isPng(bytes) ? picture(file, bytes, scale) : drawing(file, candidates(file, bytes, scale), scale);
        } catch (DrawingException e) {
            throw new BringException(
                    String.valueOf(e.getMessage()), "Mend the drawing, save it and drop it here again.");
        } catch (PictureException e) {
            throw new BringException(String.valueOf(e.getMessage()), "Choose another picture, saved as PNG.");
        }
    }

    /** @throws DrawingException when it cannot be read */
    static Candidates candidates(String file, byte[] bytes, double scale) {
        Optional<OtherKind> other = OtherKind.of(bytes);
        if (other.isPresent()) {
            throw other.get().refused(file);
        }
        return SvgCandidates.read(file, bytes, scale);
    }

    private static boolean isPng(byte[] bytes) {
        return bytes.length > 3 && (bytes[0] & 0xff) == 0x89 && bytes[1] == 'P' && bytes[2] == 'N' && bytes[3] == 'G';
    }

    private static Brought picture(String file, byte[] bytes, double scale) {
        Picture picture = PictureReader.read(file, bytes);
        double dpi = picture.dpi().orElse(USUAL_DPI) / scale;
        PictureTrace.Traced traced = PictureTrace.of(
                picture, new PictureTrace.Setup(Optional.empty(), OptionalDouble.of(dpi), 0.1, OptionalDouble.empty()));
        Candidates.Shape shape = new Candidates.Shape("p1", "", traced.outline(), Optional.empty(), 0);
        Candidates one = new Candidates(
                traced.width(),
                traced.height(),
                picture.dpi().isPresent(),
                List.of(shape),
                List.of(),
                List.of(),
                List.of());
        Brought read = drawing(file, one, scale);
        return new Brought(
                file,
                true,
                read.sized(),
                scale,
                read.width(),
                read.height(),
                read.shapes(),
                read.rounds(),
                read.lines(),
                read.flaws());
    }

    private static Brought drawing(String file, Candidates found, double scale) {
        Map<String, Integer> layers = layers(found.shapes());
        return new Brought(
                file,
                false,
                found.sized(),
                scale,
                found.width(),
                found.height(),
                found.shapes().stream()
                        .map(shape -> shape(shape, layers.getOrDefault(shape.key(), FIRST_LAYER)))
                        .toList(),
                found.rounds().stream()
                        .map(round -> round(round, found.shapes()))
                        .toList(),
                found.lines().stream()
                        .map(line ->
                                new Brought.BroughtLine(line.key(), Pair.ring(line.points()), on(line, found.shapes())))
                        .toList(),
                found.flaws().stream()
                        .map(flaw -> new Brought.BroughtFlaw(
                                flaw.key(),
                                Pair.of(flaw.at()),
                                (flaw.id().isEmpty() ? "A shape" : "\"" + flaw.id() + "\"") + " (line " + flaw.line()
                                        + ") " + flaw.words()))
                        .toList());
    }

    /** What is painted over another lies in a layer before it; what lies beside shares one. */
    private static Map<String, Integer> layers(List<Candidates.Shape> shapes) {
        Map<String, Integer> layers = new LinkedHashMap<>();
        for (int i = 0; i < shapes.size(); i++) {
            int layer = FIRST_LAYER;
            for (int j = 0; j < i; j++) {
                int behind = layers.getOrDefault(shapes.get(j).key(), FIRST_LAYER);
                if (behind >= layer
                        && shapes.get(i).outline().overlaps(shapes.get(j).outline())) {
                    layer = behind + 1;
                }
            }
            layers.put(shapes.get(i).key(), layer);
        }
        return layers;
    }

    private static Brought.BroughtShape shape(Candidates.Shape shape, int layer) {
        Outline outline = shape.outline();
        List<List<Pair>> rings = new ArrayList<>();
        rings.add(Pair.ring(outline.outer()));
        outline.holes().forEach(hole -> rings.add(Pair.ring(hole)));
        return new Brought.BroughtShape(
                shape.key(),
                shape.id(),
                rings,
                outline.area(),
                outline.bounds().width(),
                outline.bounds().height(),
                layer,
                shape.paint().orElse(null),
                shape.twins());
    }

    private static Brought.BroughtRound round(Candidates.Round round, List<Candidates.Shape> shapes) {
        Circle circle = round.circle();
        return new Brought.BroughtRound(
                round.key(),
                round.id(),
                Pair.of(circle.centre()),
                circle.radius(),
                shapes.stream()
                        .filter(shape -> shape.outline().contains(circle.centre()))
                        .map(Candidates.Shape::key)
                        .toList());
    }

    private static @org.jspecify.annotations.Nullable String on(Candidates.Open line, List<Candidates.Shape> shapes) {
        for (int i = shapes.size() - 1; i >= 0; i--) {
            Outline outline = shapes.get(i).outline();
            if (line.points().stream().allMatch((Point point) -> outline.contains(point))) {
                return shapes.get(i).key();
            }
        }
        return null;
    }
}
