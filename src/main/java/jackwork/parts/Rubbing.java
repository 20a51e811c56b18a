package jackwork.parts;

import jackwork.stock.FrictionPair;
import java.util.List;

/** A link in which one pair of surfaces rubs. */
interface Rubbing extends Link {

    FrictionPair friction();

    /** The same with other surfaces. */
    Link with(FrictionPair other);

    @Override
    default List<FrictionPair> frictions() {
        return List.of(friction());
    }

    @Override
    default Link rubbing(FrictionPair pair, FrictionPair other) {
        return friction().equals(pair) ? with(other) : this;
    }
}
