package jackwork.price;

import java.util.Optional;

/** A way to make it quicker. A new one is one new file and one line in {@link Quicker}. */
interface Alternative {

    /** Empty where the design has nothing that it would make quicker. */
    Optional<Offer> offer(Costing costing);
}
