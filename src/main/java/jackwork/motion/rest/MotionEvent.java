package jackwork.motion.rest;

import jackwork.motion.model.Direction;

/**
 * Something on the stroke that a maker must know of.
 *
 * @param kind what it is
 * @param stroke where it begins, 0 to 1
 * @param until where it ends; equal to {@code stroke} for a single place
 * @param direction in which it is met
 * @param what the joint, stop or bodies concerned, for people
 */
public record MotionEvent(Kind kind, double stroke, double until, Direction direction, String what) {

    /** What stands between the names of an event that concerns several. */
    static final String AGAINST = " against ";

    /** Whether it concerns a joint by exactly this name. */
    public boolean concerns(String name) {
        return java.util.List.of(what.split(AGAINST)).contains(name);
    }

    /** Whether it concerns a body, whatever it does. */
    public boolean concernsBody(String name) {
        return java.util.Arrays.stream(what.split(", ")).anyMatch(w -> w.equals(name) || w.startsWith(name + " "));
    }

    /** What can happen on a stroke. */
    public enum Kind {
        /** The lever can turn no further while parts still move: links stand in line. */
        DEAD_POINT,
        /** Links stand in line and two ways lead on: which is taken is left to chance. */
        CHANGE_POINT,
        /** A stop, or the end of a slot, is met before the stroke is done. */
        STOP_REACHED,
        /** A string goes taut, a stop is met, or parts touch. */
        TAKES_HOLD,
        /** A string goes slack, a stop is left, or parts come apart. */
        LETS_GO,
        /** Parts that the lever does not decide fall over to another resting place. */
        FALLS_OVER,
        /** Friction alone holds the mechanism, whatever the finger's force. */
        LOCK_UP,
        /** Returning: the figure no longer pushes the lever back; it hangs there. */
        HANGS_UP,
        /** Pressing: the figure pulls the lever along; it runs ahead of the finger. */
        RUNS_AHEAD
    }
}
