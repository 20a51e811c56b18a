package jackwork.fuzz;

import jackwork.app.bring.BringException;
import jackwork.drawing.DrawingException;
import jackwork.drawing.SvgReader;
import java.io.IOException;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A drawing, once as a design's own and once as it is dropped on the page. */
public final class SvgReading extends Reading {

    private static final SvgReading READING = new SvgReading();
    private static final Pattern NAMES = Pattern.compile("drawing\\.svg");

    private final Dropped dropped = new Dropped("svg");

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    @Override
    protected void read(byte[] input) throws IOException {
        Map<java.nio.file.Path, String> before = state(dropped.workshop());
        try {
            dropped.read("drawing.svg", input);
            SvgReader.read("drawing.svg", input);
        } finally {
            requireUntouched(before, dropped.workshop());
        }
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        return thrown instanceof DrawingException || thrown instanceof BringException ? thrown.getMessage() : null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}
