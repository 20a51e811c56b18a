package jackwork.price;

import java.math.BigDecimal;
import java.util.List;

/** Where a finished piece is sold. W is the maker's net price: what is left to the maker, without VAT, fees, postage. */
interface Channel {

    /** The maker's own name for it. */
    String name();

    /** {@code outright}, {@code commission}, {@code web} or {@code fair}. */
    String kind();

    /** Whether anything of a price is left at all. */
    boolean possible();

    /** What the buyer pays, for W. */
    BigDecimal shelf(BigDecimal net);

    /** W, for what the buyer pays; undoes {@link #shelf}. */
    BigDecimal net(BigDecimal shelf);

    /** What comes on top of W, in order: what each is called and how far it reaches. */
    List<Rung> above(BigDecimal net);

    /** The formula, for people. */
    String formula();
}
