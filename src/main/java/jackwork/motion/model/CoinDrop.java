package jackwork.motion.model;

/**
 * A coin let go in the slot, as a disc that rolls in the mechanism's plane.
 *
 * @param mass g
 * @param radius mm
 * @param offset of its centre from the slot's middle, mm to the right
 * @param speed downward when it is let go, mm/s
 * @param friction on wood
 * @param rebound share of the approach speed that comes back from wood
 * @param bucketRebound likewise from the bucket
 */
public record CoinDrop(
        double mass,
        double radius,
        double offset,
        double speed,
        double friction,
        double rebound,
        double bucketRebound) {}
