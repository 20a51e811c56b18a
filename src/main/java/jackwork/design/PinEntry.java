package jackwork.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

@About("A rod through several parts, about which they turn.")
public record PinEntry(
        @About("The parts it passes through, two or more; parts of different bodies turn on each other here.")
        @Names(value = NameKind.PART, orGround = true)
        List<String> parts,

        @About("The rod.") @Names(NameKind.ROD) String rod,

        @About("The part that grips the rod, the first when left out; the others run on it.")
        @Names(value = NameKind.PART, orGround = true)
        @Nullable
        String tight,

        @About("Where; the circle with the pin's own name when left out.") @OwnCircle @Nullable
        Place at,

        @About("Outside diameter of a printed sleeve on the rod that the others turn on; the rod itself when left out.")
        @Quantity(
                unit = "mm",
                least = 2,
                most = 80,
                usualTo = 30,
                why = "a printed sleeve has a wall all round its rod")
        @Nullable
        Double shoulder)
        implements Entry {

    /** A printed sleeve is two printed lines thick all round, mm on diameter. */
    private static final double LEAST_SLEEVE = 1.6;

    @Override
    public void check(String path, Around around) {
        if (parts.size() < 2) {
            around.problem(path, "a pin goes through two parts or more, this one names " + parts.size());
        }
        for (int i = 0; i < parts.size(); i++) {
            if (parts.indexOf(parts.get(i)) < i) {
                around.problem(
                        path + ".parts." + i, "read \"" + parts.get(i) + "\" a second time; name each part once");
            }
        }
        if (tight != null && !parts.contains(tight)) {
            around.problem(
                    path + ".tight",
                    "read \"" + tight + "\", expected one of the pin's parts" + NearestWord.hint(tight, parts));
        }
        WorkshopFile.RodEntry entry = around.workshop().rods().get(rod);
        if (shoulder != null && entry != null && !(shoulder >= entry.diameter().value() + LEAST_SLEEVE)) {
            around.problem(
                    path + ".shoulder",
                    "read " + shoulder + ", expected at least " + LEAST_SLEEVE + " mm more than the rod, which is "
                            + entry.diameter().value());
        }
    }
}
