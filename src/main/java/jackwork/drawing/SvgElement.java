package jackwork.drawing;

import java.util.List;
import java.util.Map;

/**
 * One element of an SVG file as it stands there.
 *
 * @param offset where its tag begins, chars from the file's beginning
 * @param attributes by local name; only those that say something about shape, place or paint
 */
record SvgElement(
        SvgSource source, int offset, String name, Map<String, String> attributes, List<SvgElement> children) {

    /** The attribute's value, or nothing as an empty string: SVG treats both alike. */
    String attribute(String key) {
        return attributes.getOrDefault(key, "").strip();
    }

    boolean has(String key) {
        return !attribute(key).isEmpty();
    }

    String id() {
        return attribute("id");
    }

    /** A presentation property from the style attribute, else from the attribute of that name. */
    String property(String key) {
        for (String declaration : attribute("style").split(";")) {
            int colon = declaration.indexOf(':');
            if (colon > 0 && declaration.substring(0, colon).strip().equals(key)) {
                return declaration.substring(colon + 1).strip();
            }
        }
        return attribute(key);
    }

    boolean hidden() {
        return property("display").equals("none");
    }

    DrawingException problem(String problem) {
        String name = has("id") ? "\"" + id() + "\" (<" + this.name + ">): " : "<" + this.name + ">: ";
        return source.problem(offset, name + problem);
    }

    /** "line 12" of this element, for messages that name a second place. */
    int line() {
        return source.problem(offset, "").line();
    }
}
