package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.geometry.TurnedMeeting;
import org.jspecify.annotations.Nullable;

/**
 * An end of the way on which a body turns against another.
 *
 * @param of lever, bucket or gate, or the name of a written stop
 * @param kind of what, and which end
 * @param body that turns
 * @param against the body that it turns against, 0 for the ground
 * @param pivot about which it turns, in the position drawn
 * @param from the other end of its way, rad from the position drawn
 * @param at this end, likewise; where nothing is wished, the farthest to which anything is looked for
 * @param wished whether the design says where
 */
public record TurningEnd(
        String of, Kind kind, int body, int against, Point pivot, double from, double at, boolean wished) {

    /** What turns, and to which end. */
    public enum Kind {
        LEVER_RESTS,
        LEVER_PRESSED,
        BUCKET_RESTS,
        BUCKET_TIPPED,
        FROM,
        TO
    }

    /** How far a stop is looked for where no angle is wished, degrees: more than any lever or bucket goes. */
    private static final double FARTHEST = 170;

    /** The angle looked for, degrees without sign. */
    static double wished(@Nullable Double angle) {
        return angle == null ? FARTHEST : angle;
    }

    static TurningEnd leverRests(Lever lever, double from) {
        return new TurningEnd("lever", Kind.LEVER_RESTS, lever.body(), 0, lever.pivot(), from, 0, true);
    }

    static TurningEnd leverPressed(Lever lever, boolean wished) {
        return new TurningEnd("lever", Kind.LEVER_PRESSED, lever.body(), 0, lever.pivot(), 0, lever.turn(), wished);
    }

    static TurningEnd bucketRests(CoinWorks works, double from) {
        return new TurningEnd(works.bucketWord(), Kind.BUCKET_RESTS, works.bucket(), 0, works.pivot(), from, 0, true);
    }

    static TurningEnd bucketTipped(CoinWorks works, boolean wished) {
        return new TurningEnd(
                works.bucketWord(), Kind.BUCKET_TIPPED, works.bucket(), 0, works.pivot(), 0, works.tip(), wished);
    }

    static TurningEnd from(Stop stop) {
        return new TurningEnd(stop.name(), Kind.FROM, stop.a(), stop.b(), stop.at(), stop.to(), stop.from(), true);
    }

    static TurningEnd to(Stop stop) {
        return new TurningEnd(stop.name(), Kind.TO, stop.a(), stop.b(), stop.at(), stop.from(), stop.to(), true);
    }

    /** Whether it comes to the one before the other on its way to this end. */
    boolean isBefore(TurnedMeeting one, TurnedMeeting other) {
        return (one.angle() - other.angle()) * sense() < 0;
    }

    /** Whether it is an end of a stop that the design writes, and none of lever and bucket. */
    public boolean isWritten() {
        return kind == Kind.FROM || kind == Kind.TO;
    }

    /** As a post's {@code stops} says it. */
    public String when() {
        return switch (kind) {
            case LEVER_RESTS, BUCKET_RESTS -> "rest";
            case LEVER_PRESSED -> "pressed";
            case BUCKET_TIPPED -> "tipped";
            case FROM -> "from";
            case TO -> "to";
        };
    }

    /** For people. */
    public String name() {
        return switch (kind) {
            case LEVER_RESTS, BUCKET_RESTS -> of + " at rest";
            case LEVER_PRESSED -> of + " fully pressed";
            case BUCKET_TIPPED -> of + " tipped";
            case FROM -> of + ", from";
            case TO -> of + ", to";
        };
    }

    /** A word for it that no other end has: {@code lever-rest}, {@code shut-from}. */
    public String id() {
        boolean bucket = kind == Kind.BUCKET_RESTS || kind == Kind.BUCKET_TIPPED;
        return (bucket ? "bucket" : of) + "-" + when();
    }

    /** +1 when it comes to this end counter-clockwise, −1 otherwise. */
    public double sense() {
        return Math.signum(at - from);
    }
}
