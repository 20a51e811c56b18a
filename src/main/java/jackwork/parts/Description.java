package jackwork.parts;

import jackwork.geometry.Point;
import java.util.List;
import java.util.function.BiConsumer;

/** What is told of a link, value by value; units as in docs/mechanism.md. */
public interface Description {

    void put(String name, String word);

    void put(String name, boolean truth);

    void put(String name, int number);

    /** @param decimals that are told */
    void put(String name, double number, int decimals);

    void put(String name, Point point);

    /** Corners of a closed outline. */
    void put(String name, List<Point> ring);

    /** A body by its number in the assembly; told by its name. */
    void putBody(String name, int body);

    /** A list, each item described in turn; an empty one is told as such. */
    <T> void putList(String name, List<T> items, BiConsumer<T, Description> each);
}
