package jackwork.design;

/** An entry of a section of a box's or figure's file. */
public interface Entry {

    /**
     * What its words cannot say one by one; each by itself is held against the vocabulary.
     *
     * @param path from the file's root: {@code pins.hip}
     */
    default void check(String path, Around around) {}
}
