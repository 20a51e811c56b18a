package jackwork.parts;

import org.jspecify.annotations.Nullable;

/**
 * What a hole is bored for, and the room that is left in it. All that reckons with a clearance asks here, so that no number
 * can stand beside the hole that is bored. A hole is bored for the rod as the workshop numbers it; what comes of both is
 * {@link AsMade}:
 * <pre>
 *   clearance = hole as it comes out − what goes through it as it comes
 *             = fit + Δfit + (cut: Δkerf; printed: −2 off) − (rod: Δd; printed shoulder: 2 off) + wear
 * </pre>
 * all in mm of diameter, negative where it binds or grips. The cut follows the workshop's kerf half a kerf inside the hole's
 * edge, so a kerf that is wider by Δ takes Δ more of the diameter. Left out, since no workshop tells them: the taper of
 * the cut, rods and holes that are not round, wood that swells into its holes, glue and paint in them.
 *
 * @param rod the workshop's name of what goes through it; null for a printed shoulder or eyelet
 * @param through diameter of that as numbered, mm
 * @param fit by which the hole is wider as bored, mm; negative grips
 * @param grips true when it holds what goes through, false when that runs in it
 * @param printed whether it is a hole of a printed part
 */
public record Bore(@Nullable String rod, double through, double fit, boolean grips, boolean printed) {

    /** Of the hole as bored, mm. */
    public double diameter() {
        return through + fit;
    }

    /** Room in it, mm of diameter. */
    public double clearance(AsMade made) {
        double off = 2 * made.off();
        double hole = (grips ? made.press() : made.running() + made.worn()) + (printed ? -off : made.kerf());
        return fit + hole - (rod == null ? off : made.rod(rod));
    }
}
