package jackwork.check;

import java.util.List;

/** Something a maker wants to know of a design before cutting. Asked from several threads: it keeps nothing of its own. */
interface Question {

    /** Whether it makes sense to ask it of this design. */
    default boolean appliesTo(Subject subject) {
        return true;
    }

    /** Whether it is answered within a few milliseconds, while a pivot is dragged. */
    default boolean isQuick() {
        return true;
    }

    /** One finding, or one for each coin or gesture. */
    List<Finding> ask(Subject subject);
}
