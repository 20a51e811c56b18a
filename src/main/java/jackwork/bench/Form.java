package jackwork.bench;

import jackwork.stock.Uncertain;
import java.util.List;

/** A way of measuring: what its readings are called, and what becomes of them in {@code workshop.yaml}. */
interface Form {

    /** {@code kerf}. */
    String kind();

    /** What the readings are called; nothing else may stand among them. */
    List<String> names();

    /** @throws IllegalArgumentException when they cannot be what they say */
    void check(Measured measured);

    /**
     * @param same measurements of one and the same thing, at least one
     * @throws IllegalArgumentException when there are too few readings in them
     */
    Uncertain of(List<Measured> same);

    /** Where it belongs, for people: {@code laser.kerf}. */
    String place(String about);

    /** What stands there now, as this text of {@code workshop.yaml} has it. */
    String edit(String workshop, String about, Uncertain value);
}
