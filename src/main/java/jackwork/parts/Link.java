package jackwork.parts;

import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * A joint other than pin, slide and stop: what holds or drives two or more bodies, in the position drawn. Its
 * {@link LinkKind} says how it came about.
 */
public interface Link {

    String name();

    /** Numbers of the bodies that it names. */
    List<Integer> bodies();

    /** Surfaces that rub in it. */
    default List<FrictionPair> frictions() {
        return List.of();
    }

    /** The same with one pair of surfaces rubbing differently. */
    default Link rubbing(FrictionPair pair, FrictionPair other) {
        return this;
    }

    /** {@code other} where {@code mine} is the pair that changes. */
    static FrictionPair changed(FrictionPair mine, FrictionPair pair, FrictionPair other) {
        return mine.equals(pair) ? other : mine;
    }
}
