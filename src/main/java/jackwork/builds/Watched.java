package jackwork.builds;

import jackwork.motion.coin.CycleResult;
import java.util.Optional;

/**
 * One trial that was watched.
 *
 * @param cycle what was measured; empty when the coin never got as far as into the works
 */
public record Watched(BuildResult.Trial trial, Optional<CycleResult> cycle) {}
