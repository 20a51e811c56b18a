package jackwork.make;

import jackwork.drawing.ClothPattern;
import jackwork.drawing.Paper;
import jackwork.parts.Artwork;
import jackwork.parts.Assembly;
import java.util.List;
import java.util.Optional;

/** The patterns of a design's cloth, to print in true size and cut by. */
public final class ClothPages {

    private static final List<String> WORDS =
            List.of("Cut the hem with the piece; turn it in or sew along the dashed line.");

    private ClothPages() {}

    /** PDF; empty when the design has no cloth. */
    public static Optional<byte[]> pdf(Assembly assembly, Paper paper) {
        List<ClothPattern> patterns =
                assembly.artwork().cloths().stream().map(ClothPages::pattern).toList();
        return patterns.isEmpty()
                ? Optional.empty()
                : Optional.of(ClothPattern.write(assembly.name(), patterns, paper, WORDS));
    }

    private static ClothPattern pattern(Artwork.Cloth cloth) {
        Artwork.Span span = cloth.span();
        return new ClothPattern(
                cloth.on() == null ? cloth.name() : cloth.name() + " (on " + cloth.on() + ")",
                cloth.outline(),
                cloth.hem(),
                cloth.grain(),
                span == null ? List.of() : List.of(span.from(), span.to()));
    }
}
