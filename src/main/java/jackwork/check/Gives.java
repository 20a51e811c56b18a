package jackwork.check;

import jackwork.stock.Uncertain;
import java.util.Comparator;
import java.util.List;

/**
 * One way in which something gives under the refused press.
 *
 * @param part what gives
 * @param how it does: {@code bends}
 * @param stress by one newton of the finger, N/mm²
 * @param strength what it bears
 * @param of whose strength that is
 * @param formula how the stress comes about
 */
record Gives(Sentence part, String how, double stress, Uncertain strength, String of, String formula) {

    /** The finger's force at which it does, N. */
    double at() {
        return strength.value() / stress;
    }

    /** Which gives at the lightest press. */
    static Gives first(List<Gives> all) {
        return all.stream().min(Comparator.comparingDouble(Gives::at)).orElseThrow();
    }

    /** The same with one strength another. */
    Gives with(String name, double value) {
        return of.equals(name)
                ? new Gives(
                        part,
                        how,
                        stress,
                        new Uncertain(value, value, value, strength.unit(), strength.basis(), strength.source()),
                        of,
                        formula)
                : this;
    }
}
