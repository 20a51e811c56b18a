package jackwork.parts;

/**
 * A printed sleeve pressed on a rod: a shoulder that parts turn on, an eyelet, a spacer.
 *
 * @param outside diameter, mm
 * @param bore diameter, mm
 * @param length mm
 */
public record Sleeve(double outside, double bore, double length) {

    /** A shoulder stands out beyond what turns on it by so much in all, mm: a guess. */
    public static final double PLAY = 0.2;

    public Sleeve {
        if (!(outside > bore && bore > 0 && length > 0)) {
            throw new IllegalArgumentException("a sleeve of " + outside + " mm outside, " + bore + " mm inside and "
                    + length + " mm length cannot be made");
        }
    }

    /** mm³. */
    public double volume() {
        return Math.PI / 4 * (outside * outside - bore * bore) * length;
    }
}
