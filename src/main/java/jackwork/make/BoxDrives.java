package jackwork.make;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.Lever;
import jackwork.parts.PinJoint;
import java.util.Locale;

/**
 * What the box by itself can do for a figure: how far its lever carries a rod, how hard it may press, and how much a figure
 * may hold the lever back before it no longer comes up by its own weight.
 *
 * @param turn of the lever, rad
 * @param pressing moment that a comfortable finger leaves for the figure at worst, N·mm
 * @param returning moment with which the lever alone comes back at worst, friction of its pivot taken off, N·mm; negative
 *     when it does not
 */
record BoxDrives(double turn, double pressing, double returning) {

    /** m/s²: standard gravity. */
    private static final double GRAVITY = 9.80665;

    static BoxDrives of(Assembly assembly) {
        Lever lever = assembly.lever();
        Body body = assembly.body(lever.body());
        double worstOwn = Double.NEGATIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        double armOfFinger = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 10; i++) {
            double angle = lever.angle(i / 10.0);
            Point centre = body.centre().turnedAbout(lever.pivot(), angle).minus(lever.pivot());
            Point press = lever.pressDrawn().turnedAbout(lever.pivot(), angle).minus(lever.pivot());
            // Weight turns it by −m g x; back means against the press.
            double own = body.mass() / 1000 * GRAVITY * centre.x() * Math.signum(lever.turn());
            least = Math.min(least, own);
            worstOwn = Math.max(worstOwn, own);
            armOfFinger = Math.min(armOfFinger, Math.abs(press.x()));
        }
        double friction = 0;
        for (PinJoint pin : assembly.pins()) {
            if (pin.name().equals(lever.pin())) {
                friction = pin.friction().coefficient().high() * pin.radius() * body.mass() / 1000 * GRAVITY;
            }
        }
        double finger = assembly.workshop().finger().comfortable().value();
        return new BoxDrives(
                Math.abs(lever.turn()), finger * armOfFinger - Math.max(0, worstOwn) - friction, least - friction);
    }

    /** For whoever designs a figure for this box. */
    String words(String name) {
        StringBuilder words = new StringBuilder(name + ": what this box can drive\n\n");
        words.append(String.format(Locale.ROOT, "The lever turns by %.1f degrees.%n%n", Math.toDegrees(turn)));
        words.append("pin on the lever,        it travels     it may press      the figure may hold back\n");
        words.append("mm from the pivot             mm              N             the lever by at most, N\n");
        for (int radius : new int[] {15, 20, 30, 40, 50, 60}) {
            words.append(String.format(
                    Locale.ROOT,
                    "%10d %23.1f %15.2f %24s%n",
                    radius,
                    2 * radius * Math.sin(turn / 2),
                    pressing / radius,
                    returning > 0 ? String.format(Locale.ROOT, "%.3f", returning / radius) : "nothing"));
        }
        words.append(
                returning > 0
                        ? "\nThe lever comes up by itself.\n"
                        : String.format(
                                Locale.ROOT,
                                "%nThe lever does not come up by itself: the figure must return it with at least %.1f N·mm,"
                                        + "%nwhich is %.2f N on a pin 40 mm from the pivot.%n",
                                -returning,
                                -returning / 40));
        return words.append(
                        "\nPressing: a comfortable finger at its shortest arm, the lever's own weight and the pivot's"
                                + "\nfriction taken off. Coins and coin works are in `jackwork check`.\n")
                .toString();
    }
}
