package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

@About("A rod through several parts, about which they turn.")
public record PinEntry(
        @About(
                "The parts it passes through, two or more; parts of different bodies turn on each other here. Those that hold a post stand still.")
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
        Double shoulder,

        @About(
                "What it stops, when it is a post: it reaches into that part's layers, and from the place drawn it is moved round"
                        + " that part's pivot until the two touch.")
        @Nullable
        Stopped stops)
        implements Entry {

    @About("A part that turns, and where on its way a post is to stop it.")
    public record Stopped(
            @About("The part: of the lever, of the bucket, or one whose turning `stops` limit.") @Names(NameKind.PART)
            String part,

            @About(
                    "At rest as drawn; the lever pressed by its throw, the bucket tipped by its tip; or at one end of its `stops`.")
            @OneOf({"rest", "pressed", "tipped", "from", "to"})
            String when) {}

    /** A printed sleeve is two printed lines thick all round, mm on diameter. */
    private static final double LEAST_SLEEVE = 1.6;

    @Override
    public void check(String path, Around around) {
        if (parts.size() < (stops == null ? 2 : 1)) {
            around.problem(
                    path, "a pin goes through two parts or more, a post through one, this one names " + parts.size());
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

    /** All parts whose layers the rod reaches: those that it passes, and what it stops. */
    public List<String> reaches() {
        if (stops == null || parts.contains(stops.part())) {
            return parts;
        }
        List<String> all = new ArrayList<>(parts);
        all.add(stops.part());
        return all;
    }
}
