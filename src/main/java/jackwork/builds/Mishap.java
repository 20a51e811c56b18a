package jackwork.builds;

import jackwork.check.Finding;
import java.util.List;

/** Something that visitors do besides dropping one coin and pressing: a question answered in time. */
interface Mishap {

    List<Finding> ask(Visitor visitor);
}
