package jackwork.stock;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A table of things that can be bought, each under a name of its own. */
public final class Catalogue<T extends Catalogue.Entry> {

    /** Something in a catalogue. */
    public interface Entry {

        /** What files call it. */
        String name();
    }

    private final List<T> all;

    Catalogue(List<T> all) {
        this.all = List.copyOf(all);
    }

    /** A table of our own, each row a thing. */
    static <T extends Entry> Catalogue<T> read(String file, Function<Table.Row, T> thing) {
        return new Catalogue<>(Table.read(file).rows().stream().map(thing).toList());
    }

    public List<T> all() {
        return all;
    }

    public Optional<T> find(String name) {
        return all.stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    public List<String> names() {
        return all.stream().map(Entry::name).toList();
    }
}
