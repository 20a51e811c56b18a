package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.ClothEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.parts.Artwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Each piece of cloth has an outline that can be cut from cloth and sewn, as large as what it spans. */
final class ClothCut implements Question {

    /** A strip narrower than this frays away, mm: common practice, no source. */
    private static final double FRAYS = 2;
    /** One narrower than this is a ribbon, mm, and is bought: common practice, no source. */
    private static final double RIBBON = 5;
    /** As cloth lies on a bolt, mm: common practice, no source. */
    private static final double BOLT = 1500;

    @Override
    public boolean appliesTo(Subject subject) {
        return !subject.assembly().artwork().cloths().isEmpty();
    }

    @Override
    public List<Finding> ask(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (Artwork.Cloth cloth : subject.assembly().artwork().cloths()) {
            findings.add(find(subject.design(), cloth));
        }
        return findings;
    }

    private static Finding find(Design design, Artwork.Cloth cloth) {
        double narrowest = 2 * cloth.outline().inscribed(0.05).radius();
        Bounds bounds = cloth.outline().bounds();
        double longest = Math.max(bounds.width(), bounds.height());
        double across = Math.hypot(bounds.width(), bounds.height());
        Artwork.Span span = cloth.span();
        ClothEntry entry = Named.in(design.figure().cloths(), cloth.name());
        String wood = woodOf(design, entry.outline());
        if (narrowest < FRAYS) {
            return finding(
                    cloth,
                    Status.FAIL,
                    narrowest,
                    FRAYS,
                    narrowest - FRAYS,
                    say("{} is nowhere wider than {}, and frays away", entry.outline(), mm(narrowest)));
        }
        if (longest > BOLT) {
            return finding(
                    cloth,
                    Status.FAIL,
                    longest,
                    BOLT,
                    BOLT - longest,
                    say("{} is {} long, longer than cloth is wide", entry.outline(), mm(longest)));
        }
        if (span != null && lies(cloth, span) && span.length() > across) {
            return finding(
                    cloth,
                    Status.FAIL,
                    across,
                    span.length(),
                    across - span.length(),
                    say(
                            "{} of cloth are asked for between its two places, and {} is {} from corner to corner",
                            mm(span.length()),
                            entry.outline(),
                            mm(across)));
        }
        if (!wood.isEmpty()) {
            return finding(
                    cloth,
                    Status.DOUBTFUL,
                    null,
                    null,
                    null,
                    say("its outline, {}, is that of the part {}, cut from a sheet", entry.outline(), wood));
        }
        boolean ribbon = narrowest < RIBBON;
        return finding(
                cloth,
                ribbon ? Status.DOUBTFUL : Status.PASS,
                narrowest,
                RIBBON,
                narrowest - RIBBON,
                ribbon
                        ? say("{} is nowhere wider than {}, a ribbon", entry.outline(), mm(narrowest))
                        : say("{} is up to {} wide", entry.outline(), mm(narrowest)));
    }

    /** Whether both its ends are on the piece; what is tied beside it is tied by something else. */
    private static boolean lies(Artwork.Cloth cloth, Artwork.Span span) {
        Outline outline = cloth.outline();
        return (outline.contains(span.from()) || outline.distanceToEdge(span.from()) <= cloth.hem())
                && (outline.contains(span.to()) || outline.distanceToEdge(span.to()) <= cloth.hem());
    }

    /** The part of the figure that is cut by an outline; empty when it is no part's. */
    private static String woodOf(Design design, String outline) {
        return design.figure().works().parts().entrySet().stream()
                .filter(part -> {
                    String drawn = part.getValue().drawn();
                    return outline.equals(drawn == null ? part.getKey() : drawn);
                })
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    private static Finding finding(
            Artwork.Cloth cloth,
            Status status,
            @Nullable Double value,
            @Nullable Double limit,
            @Nullable Double margin,
            Sentence why) {
        return Finding.ask(Topic.CLOTH_CUT, cloth.name(), say("Can {} be cut from cloth and sewn?", cloth.name()))
                .answer(status, value, limit, margin, "mm")
                .at(Where.nowhere())
                .because(
                        why,
                        status == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Draw a closed outline for it, as it is once sewn: cloths.{}.outline.",
                                        cloth.name()),
                        "widest circle in it; a strip frays below " + Words.number(FRAYS) + " mm, is a ribbon below "
                                + Words.number(RIBBON) + " mm (common practice, no source)");
    }
}
