package jackwork.builds;

import jackwork.design.Handling;
import jackwork.geometry.Point;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import java.util.HashMap;
import java.util.Map;

/**
 * One piece as it may come out, and the visitor in front of it. Filled in by {@link Unknown}s; not shared.
 *
 * <p>Lengths mm, speeds mm/s, forces N, tilt degrees.
 */
final class Build {

    Assembly assembly;
    /** Kerf beyond what the workshop reckons with: every part is smaller all round by half of it. */
    double kerf;
    /** Paint on one face, mm: it takes its room from slot, gap and side gaps. */
    double film;

    /** Share of the approach speed that comes back from what stops lever and bucket. */
    double stopRebound = MechanismKind.WOOD_ON_WOOD;
    /** Friction at rest, in frictions of what slides. */
    double stiction = 1;
    /** How much farther back than drawn each stop came to stand, mm. */
    final Map<String, Double> drawnBack = new HashMap<>();

    /** Where the lever's hole came out beside where it is drawn, mm. */
    Point leverPlace = Point.ORIGIN;
    /** Likewise the bucket's. */
    Point bucketPlace = Point.ORIGIN;
    /** How far parts of lever and bucket slipped when they were glued up, mm, by their name. */
    final Map<String, Point> slips = new HashMap<>();
    /** Where the hole of each other joint came out, mm, by its name. */
    final Map<String, Point> holes = new HashMap<>();
    /** How far each weight came to sit beside where it is drawn, mm, by its name. */
    final Map<String, Point> weightPlaces = new HashMap<>();
    /** How much heavier than written each weight came out that is given in grams, as a share. */
    final Map<String, Double> heavier = new HashMap<>();
    /** By how much the bow of sheets narrows the coin's gap and the bucket's, mm. */
    double warp;
    /** By how much the bucket's rod is thicker where it is thickest, mm. */
    double outOfRound;

    /** What each pin drags whatever it bears, N·mm, by its name. */
    final Map<String, Double> drags = new HashMap<>();

    double coinMass;
    /** How much wider the coin is than published. */
    double coinWidth;
    /** Where the coin is let go, from one end of the slot's play (−1) to the other (+1). */
    double offset;

    double dropSpeed;
    double rebound;
    double bucketRebound;
    double pressForce;
    double pressSpeed;
    double tilt;
    /** Where the lever lies in the play of its hole, from all to the left (−1) to all to the right (+1). */
    double leverSide;
    /** Likewise the bucket. */
    double bucketSide;

    /** As numbered, without any spread. */
    Build(Assembly assembly) {
        Handling handling = assembly.workshop().handlingOrGuess();
        this.assembly = assembly;
        this.coinMass = handling.coinMass().value();
        this.dropSpeed = handling.dropSpeed().value();
        this.rebound = handling.rebound().value();
        this.bucketRebound = assembly.coinWorks().rebound().value();
        this.pressForce = assembly.workshop().finger().comfortable().value();
        this.pressSpeed = handling.pressSpeed().value();
        this.tilt = handling.tilt().value();
    }

    /** How far the lever lies beside where it is drawn, in the play of its hole and with that hole, mm. */
    Point leverAside() {
        return leverPlace.plus(new Point(leverSide * assembly.leverBearing().play(), 0));
    }

    /** Likewise the bucket. */
    Point bucketAside() {
        return bucketPlace.plus(new Point(bucketSide * assembly.bucketBearing().play(), 0));
    }

    /**
     * Once everything is drawn: what stops it stands where place and kerf put it, each cut edge half a kerf farther back, and
     * is met so much later as the body lies away from it in its play.
     */
    void settle() {
        if (!weightPlaces.isEmpty() || !heavier.isEmpty()) {
            assembly = assembly.withLumps(lump -> lump.timesMass(1 + heavier.getOrDefault(lump.name(), 0.0))
                    .moved(weightPlaces.getOrDefault(lump.name(), Point.ORIGIN)));
        }
        assembly = assembly.withDrags(pin -> drags.getOrDefault(pin.name(), pin.drag()))
                .drilled(pin -> holes.getOrDefault(pin.name(), pin.off()))
                .drawnBack(this::gap);
    }

    private double gap(Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        double place = drawnBack.getOrDefault(stopping.end().id(), 0.0);
        if (met == null) {
            return place;
        }
        int body = stopping.end().body();
        Point aside = body == assembly.lever().body()
                ? leverAside()
                : body == assembly.coinWorks().bucket() ? bucketAside() : Point.ORIGIN;
        Point beside = aside.plus(slips.getOrDefault(met.own(), Point.ORIGIN));
        return place + (2 - met.rods()) * kerf / 2 + beside.dot(met.meeting().out());
    }
}
