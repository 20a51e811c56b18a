package jackwork.app.work;

import jackwork.app.core.Scene;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
import jackwork.app.wire.PoseEntry;
import jackwork.motion.coin.CycleStage;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A coin's whole visit, to be played on the drawing.
 *
 * @param words what came of it
 * @param passes whether every stage was reached
 * @param times s from letting go, of each picture
 * @param poses of every body that moves, a picture each
 * @param coinPoses likewise of the coin; empty where it never gets into the works
 * @param stages those reached, with their times
 * @param missed the first stage that was not reached
 * @param scene the piece itself, where it differs from the design as numbered
 * @param across address of a picture out of the plane, where its cause lies there
 */
record Playback(
        String coin,
        @Places(3) double coinDiameter,
        String words,
        boolean passes,
        @Places(4) List<Double> times,
        @Places(3) Map<String, List<PoseEntry>> poses,
        @Places(3) List<PoseEntry> coinPoses,
        List<Reached> stages,
        @Nullable CycleStage missed,
        @Nullable Scene scene,
        @Nullable String across)
        implements Payload {

    record Reached(CycleStage stage, @Places(4) double at) {}
}
