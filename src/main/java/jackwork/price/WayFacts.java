package jackwork.price;

import org.jspecify.annotations.Nullable;

/**
 * What other rooms know of the design.
 *
 * @param heap coins that it holds; null when its box does not say
 * @param beginners share of virtual builds that pass under a beginner's spreads; null when not computed
 * @param places of the currency's smallest coin, for words
 */
public record WayFacts(@Nullable Double heap, @Nullable Double beginners, int places) {}
