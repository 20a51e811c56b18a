package jackwork.web;

/** The addresses of one room of the page: one file each, and one line in {@link PageServer}. */
interface Routes extends AutoCloseable {

    void add(Router routes);

    /** Ends what is under way and takes away what was only lent. */
    @Override
    default void close() {}
}
