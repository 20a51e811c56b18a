package jackwork.fuzz;

import jackwork.app.bring.BringException;
import jackwork.drawing.ArtworkFigure;
import jackwork.drawing.ArtworkPdf;
import jackwork.drawing.Paper;
import jackwork.drawing.Picture;
import jackwork.drawing.PictureException;
import jackwork.drawing.PictureReader;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A picture: printed as a part's artwork, and dropped on the page, where its edge is followed. */
public final class PictureReading extends Reading {

    private static final PictureReading READING = new PictureReading();
    private static final Pattern NAMES = Pattern.compile("picture\\.png");
    /** Larger ones are read and followed, but not printed: paper takes its time, and shows nothing new. */
    private static final int MOST_PRINTED = 1 << 16;

    private final Dropped dropped = new Dropped("picture");

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    @Override
    protected void read(byte[] input) throws IOException {
        Map<Path, String> before = state(dropped.workshop());
        try {
            Picture picture = PictureReader.read("picture.png", input);
            if (picture.width() * picture.height() <= MOST_PRINTED) {
                ArtworkPdf.write("Heron", List.of(figure(picture)), Paper.A4, List.of("Mind the blade."));
            }
            dropped.read("picture.png", input);
        } finally {
            requireUntouched(before, dropped.workshop());
        }
    }

    private static ArtworkFigure figure(Picture picture) {
        Outline part = Outline.rectangle(0, 0, 60, 40);
        return new ArtworkFigure("body", picture, new Point(-5, -5), 70, part, 2, List.of(), List.of());
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        return thrown instanceof PictureException || thrown instanceof BringException ? thrown.getMessage() : null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}
