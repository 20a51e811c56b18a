package jackwork.builds;

import jackwork.design.Handling;
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

    /** How far to the right the lever lies in the play of its hole, mm. */
    double leverAside() {
        return leverSide * assembly.leverBearing().play();
    }

    /** Likewise the bucket. */
    double bucketAside() {
        return bucketSide * assembly.bucketBearing().play();
    }

    /**
     * Once everything is drawn: what stops it stands where place and kerf put it, each cut edge half a kerf farther back, and
     * is met so much later as the body lies away from it in its play.
     */
    void settle() {
        assembly = assembly.withDrags(pin -> drags.getOrDefault(pin.name(), pin.drag()))
                .drawnBack(this::gap);
    }

    private double gap(Stopping stopping) {
        Stopping.Obstacle met = stopping.met();
        double place = drawnBack.getOrDefault(stopping.end().id(), 0.0);
        if (met == null) {
            return place;
        }
        int body = stopping.end().body();
        double aside = body == assembly.lever().body()
                ? leverAside()
                : body == assembly.coinWorks().bucket() ? bucketAside() : 0;
        return place + (2 - met.rods()) * kerf / 2 + aside * met.meeting().out().x();
    }
}
