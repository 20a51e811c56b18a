package jackwork.make;

/**
 * What a gap that closes leaves a child's finger: where a rod of 5 mm goes in, one of 12 mm must go in as well, however far it
 * has closed (EN 71-1:2001, 4.10.2 c and 4.10.3, read in an excerpt of that edition; asked of toys there, and taken here for
 * whatever a child may press).
 */
final class FingerRoom {

    /** A gap as wide lets a child's finger in, mm. */
    static final double ENTERS = 5;

    /** What must remain where it does, mm. */
    static final double LEAVES = 12;

    private FingerRoom() {}

    /** Whether a finger that got in when a gap was widest is caught when it is narrowest. */
    static boolean catches(double widest, double narrowest) {
        return widest >= ENTERS && narrowest < LEAVES;
    }

    /**
     * What to leave beside what comes nearer.
     *
     * @param nears by how much, mm
     * @param clear what is left where no finger gets in, mm
     */
    static double beside(double nears, double clear) {
        return catches(clear + nears, clear) ? LEAVES : clear;
    }
}
