package jackwork.app.make;

import jackwork.app.core.Scene;
import jackwork.app.wire.Pair;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.app.wire.Report;
import jackwork.check.Sentence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is to be made of a design, before anything is laid out on sheets; for one piece, where nothing else is said.
 *
 * @param version of the files that it is of
 * @param paper in the printer
 * @param papers that may be
 * @param mostPieces that the page makes at once
 * @param verdict on whether it can be made
 * @param thickness of the whole stack, mm
 * @param layers from the back
 * @param stack its parts, hindmost first
 * @param glueMinutes a guess until the bench has timed it
 */
record MakeView(
        String id,
        String version,
        String name,
        String paper,
        List<String> papers,
        int mostPieces,
        Report.Verdict verdict,
        List<Report.Finding> findings,
        List<StockInHand> stocks,
        List<PrintedKind> printed,
        @Places(2) double thickness,
        List<LayerPlace> layers,
        List<StackPart> stack,
        List<RodThrough> rods,
        List<GlueStep> steps,
        @Places(0) double glueMinutes)
        implements Payload {

    /**
     * A sheet that the design uses.
     *
     * @param thickness as workshop.yaml has it, mm
     * @param basis of that
     * @param measured of the sheet in hand, mm
     */
    record StockInHand(
            String stock,
            double thickness,
            double low,
            double high,
            String basis,
            String source,
            @Nullable Double measured) {}

    /**
     * @param each for one piece of the design
     * @param grams printed solid
     */
    record PrintedKind(
            String name,
            int each,
            String what,
            @Places(1) double width,
            @Places(1) double depth,
            @Places(1) double height,
            @Places(2) double grams) {}

    /** Its faces, mm from the rear face of the hindmost. */
    record LayerPlace(
            int layer, @Places(3) double back, @Places(3) double front) {}

    /** @param thickness mm */
    record StackPart(String body, @Places(3) double thickness, Scene.Part part) {}

    /**
     * @param length to cut, mm
     * @param diameter mm
     */
    record RodThrough(
            String name,
            String rod,
            int from,
            int to,
            @Places(1) double length,
            Pair at,
            double diameter) {}

    /** @param picture whether it has one */
    record GlueStep(
            String heading, List<Sentence> words, @Places(1) double minutes, boolean picture) {}
}
