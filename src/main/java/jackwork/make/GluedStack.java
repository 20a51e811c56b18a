package jackwork.make;

import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * Cut parts that are glued up before they go on.
 *
 * @param name how people call it
 * @param ofBox whether all its parts are the box's
 * @param parts their names, hindmost first
 * @param volume of them together, mm³
 */
public record GluedStack(String name, boolean ofBox, List<String> parts, double volume) {

    /** Stacks of cut parts alone, all of the box or all of the figure. */
    static List<GluedStack> of(Assembly assembly) {
        List<GluedStack> stacks = new ArrayList<>();
        for (BuildOrder.Stack stack : BuildOrder.of(assembly)) {
            List<Part> parts = stack.parts();
            boolean ofBox = parts.get(0).ofBox();
            if (parts.size() > 1 && parts.stream().allMatch(part -> part.printed() == null && part.ofBox() == ofBox)) {
                double volume = parts.stream()
                        .mapToDouble(
                                part -> part.section().area() * part.thickness().value())
                        .sum();
                stacks.add(new GluedStack(
                        stack.name(), ofBox, parts.stream().map(Part::name).toList(), volume));
            }
        }
        return stacks;
    }
}
