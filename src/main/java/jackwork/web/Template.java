package jackwork.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The path of an address, with a name for what stands last in it: {@code /api/jobs/{number}} for a name without slashes,
 * {@code /api/designs/<id>} for one that may have some, since designs stand in folders. A slash at the end of a path is of
 * no account.
 *
 * @param fixed what stands before the name
 * @param name of what stands last; empty when nothing changes
 * @param deep whether that may have slashes
 */
record Template(String fixed, String name, boolean deep) {

    static Template of(String text) {
        int begin = text.lastIndexOf('/') + 1;
        String last = text.substring(begin);
        boolean plain = last.startsWith("{") && last.endsWith("}");
        boolean deep = last.startsWith("<") && last.endsWith(">");
        Template template = plain || deep
                ? new Template(text.substring(0, begin), last.substring(1, last.length() - 1), deep)
                : new Template(text, "", false);
        if ((template.fixed + template.name).matches(".*[{}<>].*")) {
            throw new IllegalArgumentException(
                    "read the template " + text
                            + ", expected at most one name, as in /api/jobs/{number} or /api/designs/<id>, and that at the end");
        }
        return template;
    }

    /** What a path has in the name's place, decoded; null for a path that is another. */
    @Nullable
    Map<String, String> match(String path) {
        boolean slash = path.length() > "//".length() && path.endsWith("/");
        String asked = slash ? path.substring(0, path.length() - 1) : path;
        if (name.isEmpty()) {
            return asked.equals(fixed) ? Map.of() : null;
        }
        if (!asked.startsWith(fixed) || asked.length() == fixed.length()) {
            return null;
        }
        String value = decoded(asked.substring(fixed.length()));
        return value != null ? Map.of(name, value) : null;
    }

    /** A plus sign is one: only in a query does it mean a space. Null for what no name can be. */
    private @Nullable String decoded(String value) {
        if (!deep && value.indexOf('/') >= 0) {
            return null;
        }
        if (value.indexOf('%') < 0) {
            return value;
        }
        try {
            return URLDecoder.decode(value.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            // The percent sign of something else, such as %u0041.
            return null;
        }
    }
}
