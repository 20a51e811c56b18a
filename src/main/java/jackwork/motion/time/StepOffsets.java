package jackwork.motion.time;

import jackwork.motion.model.Complementarity;
import jackwork.motion.model.Rows;

/**
 * What each member of a step's complementarity problem would do without forces of its own: touches by the mean of the
 * step, what slides or is driven by its end.
 */
final class StepOffsets {

    private final Rows rows;
    private final StepContacts contacts;
    private final StepPlaces places;

    StepOffsets(Rows rows, StepContacts contacts, StepPlaces places) {
        this.rows = rows;
        this.contacts = contacts;
        this.places = places;
    }

    /**
     * Fills the problem's offsets.
     *
     * @param start velocity at the start of the step
     * @param before velocity at its end without contacts
     */
    void fill(double h, double[] start, double[] before) {
        Complementarity problem = contacts.problem;
        for (int i = 0; i < problem.size; i++) {
            double end = contacts.rate(i, before);
            double begin = contacts.rate(i, start);
            if (contacts.isFinger(i)) {
                problem.offset[i] = end - contacts.fingerTarget();
            } else if (problem.kind[i] == Complementarity.Kind.PUSH) {
                double gap = places.gapBackFromMiddle(contacts.member[i], h, start);
                boolean stays =
                        gap <= TimeLimits.SHUT && h * rows.fastest(contacts.member[i], start) <= TimeLimits.SHUT;
                problem.offset[i] = end + begin + (gap > 0 && !stays ? 2 * gap / h : 0);
            } else if (problem.kind[i] == Complementarity.Kind.HOLD || Math.abs(begin) < TimeLimits.STILL) {
                problem.offset[i] = end + begin;
            } else {
                problem.offset[i] = end;
            }
        }
    }
}
