package jackwork.parts;

import jackwork.geometry.Point;
import jackwork.geometry.TurnedMeeting;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the model lets a body turn no farther: an ideal stop, until a part provides it.
 *
 * @param name for people
 * @param body that turns
 * @param against the body that it turns against, 0 for the ground
 * @param pivot about which it turns, in the position drawn
 * @param from the other end of its way, rad from the position drawn
 * @param at this end, likewise
 */
public record TurningEnd(String name, int body, int against, Point pivot, double from, double at) {

    /** Both ends of the lever, of the bucket or gate, and of every stop that is written. */
    public static List<TurningEnd> of(Assembly assembly) {
        Lever lever = assembly.lever();
        CoinWorks works = assembly.coinWorks();
        String bucket = works.bucketWord();
        List<TurningEnd> ends = new ArrayList<>();
        ends.add(new TurningEnd("lever at rest", lever.body(), 0, lever.pivot(), lever.turn(), 0));
        ends.add(new TurningEnd("lever fully pressed", lever.body(), 0, lever.pivot(), 0, lever.turn()));
        ends.add(new TurningEnd(bucket + " at rest", works.bucket(), 0, works.pivot(), works.tip(), 0));
        ends.add(new TurningEnd(bucket + " tipped", works.bucket(), 0, works.pivot(), 0, works.tip()));
        for (Stop stop : assembly.stops()) {
            ends.add(new TurningEnd(stop.name() + ", from", stop.a(), stop.b(), stop.at(), stop.to(), stop.from()));
            ends.add(new TurningEnd(stop.name() + ", to", stop.a(), stop.b(), stop.at(), stop.from(), stop.to()));
        }
        return ends;
    }

    /** Whether it comes to the one before the other on its way to this end. */
    boolean isBefore(TurnedMeeting one, TurnedMeeting other) {
        return (one.angle() - other.angle()) * sense() < 0;
    }

    /** +1 when it comes to this end counter-clockwise, −1 otherwise. */
    double sense() {
        return Math.signum(at - from);
    }
}
