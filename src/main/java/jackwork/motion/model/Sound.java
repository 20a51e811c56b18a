package jackwork.motion.model;

/** What a mechanism must be for any solver to begin. */
final class Sound {

    private Sound() {}

    /** @throws MechanismException when joints hold the lever fast, or nothing at all holds a body */
    static void require(Mechanism mechanism) {
        requireHeld(mechanism);
        requireLeverFree(mechanism);
    }

    /** Every body that joints leave free must be caught by something: a string, a stop, a touch, a spring, a pin. */
    private static void requireHeld(Mechanism mechanism) {
        for (int body : mechanism.structure.freeBodies()) {
            boolean caught = mechanism.springs.length > 0;
            Rows rows = new Rows(mechanism);
            rows.at(mechanism.drawnPose());
            double[] move = new double[mechanism.coordinates()];
            for (int r = 0; r < mechanism.rowCount && !caught; r++) {
                caught = touches(rows, r, body, move);
            }
            boolean nothing =
                    !caught && java.util.Arrays.stream(mechanism.joints).noneMatch(j -> j instanceof Touch);
            if (nothing) {
                throw new MechanismException(
                        mechanism.bodyName(body),
                        "nothing holds " + mechanism.bodyName(body)
                                + "; join it by a pin, a slide or a string, or let it lie on another part");
            }
        }
    }

    private static boolean touches(Rows rows, int row, int body, double[] move) {
        for (int k = 0; k < 3; k++) {
            move[3 * body + k] = 1;
            boolean moves = rows.rate(row, move) != 0;
            move[3 * body + k] = 0;
            if (moves) {
                return true;
            }
        }
        return false;
    }

    /** The lever's motion must keep closed those rows as well that were left out as repeating others. */
    private static void requireLeverFree(Mechanism mechanism) {
        Structure structure = mechanism.structure;
        if (structure.redundant().length == 0) {
            return;
        }
        int n = mechanism.coordinates();
        Rows rows = new Rows(mechanism);
        rows.at(mechanism.drawnPose());
        LuFactors factors = new LuFactors(n);
        Closure closure = new Closure(mechanism, rows);
        closure.assemble(factors);
        double[] motion = new double[n];
        if (!factors.factor()) {
            return;
        }
        closure.velocity(factors, motion);
        double most = Moves.size(motion);
        for (int row : structure.redundant()) {
            if (Math.abs(rows.rate(row, motion)) > ModelLimits.GIVES * most) {
                throw new MechanismException(
                        mechanism.nameOf(row),
                        "the joints hold more than there is to hold, and the lever cannot move: " + mechanism.what(row)
                                + " is one too many; take away a pin or slide that repeats another");
            }
        }
    }
}
