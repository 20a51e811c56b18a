package jackwork.check;

import java.util.List;

/** Something a maker wants to know of a design before cutting. */
interface Question {

    /** One finding, or one for each coin or gesture. */
    List<Finding> ask(Subject subject);
}
