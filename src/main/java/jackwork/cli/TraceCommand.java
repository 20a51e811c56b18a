package jackwork.cli;

import jackwork.design.WholeFile;
import jackwork.drawing.OutlineSvg;
import jackwork.drawing.Picture;
import jackwork.drawing.PictureReader;
import jackwork.drawing.PictureTrace;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork trace PICTURE -o FILE --name PART}. */
@Command(name = "trace", description = "A part's outline from your picture (PNG), as a drawing in real millimetres.")
final class TraceCommand extends Subcommand {

    @Parameters(paramLabel = "PICTURE", description = "a PNG file")
    private Path picture = Path.of("");

    @Option(names = "-o", paramLabel = "FILE", description = "the drawing to write; outline.svg when absent")
    private Path out = Path.of("outline.svg");

    @Option(names = "--name", paramLabel = "PART", description = "the part's name; outline when absent")
    private String name = "outline";

    @Option(names = "--dpi", paramLabel = "N", description = "pixels an inch; as the picture says when absent")
    private @Nullable Double dpi;

    @Option(
            names = "--tolerance",
            paramLabel = "MM",
            description = "how far the outline may be from the picture's edge; 0.1 when absent")
    private double tolerance = 0.1;

    @Option(names = "--holes", paramLabel = "MM2", description = "keep holes of this area and more; none when absent")
    private @Nullable Double holes;

    @Option(
            names = "--by",
            paramLabel = "WHAT",
            description =
                    "alpha, background or darkness; alpha when absent, or background where nothing is transparent")
    private @Nullable String by;

    @Override
    public Integer call() throws IOException {
        if (!name.matches("[A-Za-z][A-Za-z0-9-]*") || name.equals("origin") || name.equals("box")) {
            throw new BadInputException("--name reads \"" + name
                    + "\", expected a part's name: a letter, then letters, digits and hyphens");
        }
        if (!Files.isRegularFile(picture)) {
            throw new BadInputException(picture + ": no such file; expected a picture, PNG");
        }
        Picture read = PictureReader.read(picture);
        PictureTrace.Traced traced = PictureTrace.of(
                read, new PictureTrace.Setup(Optional.ofNullable(by), optional(dpi), tolerance, optional(holes)));
        WholeFile.write(out, OutlineSvg.write(name, traced.outline(), traced.width(), traced.height()));
        System.err.printf(
                Locale.ROOT,
                "At %.0f dpi the picture is %.1f x %.1f mm, its outline %.1f x %.1f mm with %d points.%n",
                traced.dpi(),
                traced.width(),
                traced.height(),
                traced.outline().bounds().width(),
                traced.outline().bounds().height(),
                traced.outline().outer().size());
        System.out.println(out);
        return Outcome.FINE;
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
