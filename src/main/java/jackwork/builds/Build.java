package jackwork.builds;

import jackwork.design.Handling;
import jackwork.parts.Assembly;

/**
 * One piece as it may come out, and the visitor in front of it. Filled in by {@link Unknown}s; not shared.
 *
 * <p>Lengths mm, speeds mm/s, forces N, tilt degrees.
 */
final class Build {

    Assembly assembly;
    /** Kerf beyond what the workshop reckons with: every part is smaller all round by half of it. */
    double kerf;
    /** Diametral clearance of the bucket on its rod. */
    double clearance;

    /** Paint on one face, mm: it takes its room from slot, gap and side gaps. */
    double film;

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

    /** As numbered, without any spread. */
    Build(Assembly assembly) {
        Handling handling = assembly.workshop().handlingOrGuess();
        this.assembly = assembly;
        this.clearance = assembly.coinWorks().clearance();
        this.coinMass = handling.coinMass().value();
        this.dropSpeed = handling.dropSpeed().value();
        this.rebound = handling.rebound().value();
        this.bucketRebound = assembly.coinWorks().rebound().value();
        this.pressForce = assembly.workshop().finger().comfortable().value();
        this.pressSpeed = handling.pressSpeed().value();
        this.tilt = handling.tilt().value();
    }
}
