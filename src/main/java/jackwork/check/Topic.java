package jackwork.check;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What a finding is about: the stable first word of its id, {@code coin-trips} of {@code coin-trips/EUR-1}. Questions,
 * remedies, price and page name a finding by these and by no word of their own. A new one is a line here.
 */
public enum Topic {
    // What is written.
    UNUSUAL,
    // The figure and its lever.
    WHAT_STOPS,
    STAYS_TOGETHER,
    FULL_STROKE,
    LOCKS_BY_FRICTION,
    COMES_BACK,
    RUNS_AHEAD,
    FINGER_FORCE,
    GESTURE_REACHED,
    ARM_PLAY,
    STRING_OVERPULLED,
    STRING_PULLS,
    CLOTH_SPANS,
    SPRING_ACTS,
    CLOTH_CUT,
    RIDER_STAYS,
    PARTS_CLASH,
    PINS_BEAR,
    TEETH_THICK,
    TEETH_CLEAR,
    TEETH_STAY,
    PAWL_MEETS,
    PAWL_STEPS,
    CAM_STEEP,
    CAM_UNDERCUT,
    // Rods, holes and weights in the wood.
    ENDS_HELD,
    GESTURE_MARKED,
    HANGS_TOGETHER,
    HOLES_IN_WOOD,
    JOINTS_ACT,
    KICKER_IN_GAP,
    LAYERS_FILLED,
    PARTS_SHARE,
    PEGS_IN_SLOTS,
    PICTURE_LIES,
    PRINTS_FIT,
    RODS_APART,
    RODS_HELD,
    RODS_PASS,
    RODS_TURN,
    WEIGHT_FITS,
    WEIGHT_HEAVY,
    WEIGHT_LIES,
    WHEELS_CENTRED,
    WORKS_MARKED,
    WORKS_ORDERED,
    // The coin works.
    COIN_MONEY,
    COIN_FITS_SLOT,
    COIN_LEANS,
    COIN_LANDS,
    COIN_TRIPS,
    COIN_BRIDGES,
    GATE_LOCKS,
    GATE_OPENS,
    COIN_THROWN_CLEAR,
    BEARABLE_DRAG,
    BUCKET_RESETS,
    BUCKET_TWIST,
    CATCH_FREES,
    CATCH_OVERLAP,
    CATCH_HOLDS,
    REFUSED_PRESS,
    PRESSED_HOME,
    LEANS_ALONG,
    LEANS_ACROSS,
    HEAP,
    // Works, coins and case in each other.
    CASE_FITS_SHEET,
    CASH_ROOM_FITS,
    COIN_FALLS,
    COIN_LED,
    DOOR_IN_WALL,
    PRESS_REACHED,
    SCREWS_HOLD,
    SLOT_PLACED,
    WORKS_IN_CASE,
    // The making.
    FITS_SHEET,
    THINNEST_NECK,
    SMALLEST_PART,
    CASE_BARS,
    MONEY_OUT,
    STANDS_FIRM,
    FINGER_ROOM,
    JAM_REACHED,
    // A thousand pieces, and what visitors do besides.
    BUILDS,
    LEANS_FIRST,
    SHOVE,
    JIGGLE,
    TWO_COINS,
    OTHER,
    // The price.
    PAY_COST,
    PAY_MINUTES,
    PAY_BUILDS,
    PAY_BATCH,
    PAY_PRICE;

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /** As ids, files and the page write it. */
    public String word() {
        return word;
    }

    /** The id of a finding: {@code coin-trips/EUR-1}, about one coin; {@code heap}, about nothing in particular. */
    public String id(String about) {
        return about.isEmpty() ? word : word + "/" + about;
    }

    /**
     * What an id is about.
     *
     * @throws IllegalArgumentException when it is no finding's id
     */
    public static Topic of(String id) {
        return find(id).orElseThrow(() ->
                new IllegalArgumentException("\"" + id + "\" is no finding's id; its first word is no topic"));
    }

    public static boolean isId(String text) {
        return find(text).isPresent();
    }

    private static Optional<Topic> find(String id) {
        String first = Objects.requireNonNull(id).split("/", 2)[0];
        for (Topic topic : values()) {
            if (topic.word.equals(first)) {
                return Optional.of(topic);
            }
        }
        return Optional.empty();
    }
}
