package jackwork.design;

import java.util.Map;

/** Looks up a name that reading has already found to exist. */
public final class Named {

    private Named() {}

    /** @throws IllegalStateException when it does not exist after all: our fault, not the maker's */
    public static <T> T in(Map<String, T> map, String name) {
        T found = map.get(name);
        if (found == null) {
            throw new IllegalStateException("\"" + name + "\" was not checked on reading");
        }
        return found;
    }
}
