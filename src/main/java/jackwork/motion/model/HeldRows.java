package jackwork.motion.model;

/**
 * The forces of a {@link Complementarity} under given states: one linear system for the rows that are held, bounds that hang on
 * them put in; rows at a bound then have their bound, open ones nothing. One per problem; allocates nothing after construction.
 */
final class HeldRows {

    private final Complementarity problem;
    private final int stride;
    private final int[] held;
    private final double[] system;

    HeldRows(Complementarity problem, int capacity) {
        this.problem = problem;
        this.stride = capacity;
        this.held = new int[capacity];
        this.system = new double[capacity * (capacity + 1)];
    }

    /** A held row of either sign may turn by what hangs on its size: then once more, with the sign that it turned to. */
    void solve() {
        if (solveWithLastSigns()) {
            solveWithLastSigns();
        }
    }

    /** Returns whether a row that others hang on came out of the other sign than was taken for it. */
    private boolean solveWithLastSigns() {
        int n = 0;
        for (int i = 0; i < problem.size; i++) {
            if (problem.state[i] == Complementarity.HELD) {
                held[n++] = i;
            }
        }
        gather(n);
        SoftElimination.solve(system, n);
        boolean turned = turned(n);
        double[] force = problem.force;
        for (int i = 0; i < problem.size; i++) {
            if (problem.state[i] == Complementarity.OPEN) {
                force[i] = 0;
            }
        }
        for (int r = 0; r < n; r++) {
            force[held[r]] = system[r * (n + 1) + n];
        }
        for (int i = 0; i < problem.size; i++) {
            if (problem.state[i] > Complementarity.HELD) {
                force[i] = problem.state[i] == Complementarity.HIGH ? problem.highOf(i) : -problem.lowOf(i);
            }
        }
        return turned;
    }

    private void gather(int n) {
        int wide = n + 1;
        double[] matrix = problem.matrix;
        for (int r = 0; r < n; r++) {
            int i = held[r];
            for (int c = 0; c < n; c++) {
                system[r * wide + c] = matrix[i * stride + held[c]];
            }
            double sum = -problem.offset[i];
            for (int s = 0; s < problem.size; s++) {
                if (problem.state[s] <= Complementarity.HELD) {
                    continue;
                }
                double bound = problem.state[s] == Complementarity.HIGH ? problem.high[s] : -problem.low[s];
                if (problem.bearing[s] < 0) {
                    sum -= matrix[i * stride + s] * bound;
                } else {
                    int at = place(problem.bearing[s], n);
                    if (at >= 0) {
                        system[r * wide + at] += matrix[i * stride + s] * bound * sign(problem.bearing[s]);
                    }
                }
            }
            system[r * wide + n] = sum;
        }
    }

    private boolean turned(int n) {
        boolean turned = false;
        for (int s = 0; s < problem.size; s++) {
            int on = problem.state[s] > Complementarity.HELD ? problem.bearing[s] : -1;
            if (on >= 0 && problem.kind[on] == Complementarity.Kind.HOLD) {
                turned |= problem.force[on] < 0 != system[place(on, n) * (n + 1) + n] < 0;
            }
        }
        return turned;
    }

    /** A held row of either sign bears with its size: the sign of its last force. */
    private double sign(int row) {
        return problem.kind[row] == Complementarity.Kind.HOLD && problem.force[row] < 0 ? -1 : 1;
    }

    private int place(int row, int n) {
        for (int r = 0; r < n; r++) {
            if (held[r] == row) {
                return r;
            }
        }
        return -1;
    }
}
