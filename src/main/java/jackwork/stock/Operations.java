package jackwork.stock;

/** What hands do to make a piece, with how long one of each takes: guesses, until the bench has timed them. */
public final class Operations {

    private static final Catalogue<Operation> CATALOGUE = Catalogue.read("operations.csv", Operation::of);

    private Operations() {}

    public static Catalogue<Operation> catalogue() {
        return CATALOGUE;
    }
}
