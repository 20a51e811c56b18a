package jackwork.motion.coin;

/**
 * A coin and its visitor, for the peer.
 *
 * @param mass g
 * @param radius mm
 * @param offset of its centre from the slot's middle, mm to the right
 * @param speed downward when it is let go, mm/s
 * @param friction on wood
 * @param force most that the finger pushes, N
 * @param press speed that the finger does not outrun, mm/s
 */
record LoneDrop(double mass, double radius, double offset, double speed, double friction, double force, double press) {}
