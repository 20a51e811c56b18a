package jackwork.design;

import static jackwork.design.YamlText.child;
import static jackwork.design.YamlText.heads;
import static jackwork.design.YamlText.isBlock;
import static jackwork.design.YamlText.items;
import static jackwork.design.YamlText.number;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Splices single values of a YAML text in and out, and gives keys other names; every other character stays, comments and
 * order with them. What was spliced is read again and must be what was meant, else nothing is changed and the reason is
 * told with its place.
 *
 * <p>A path is a list of words: keys of mappings, numbers (from 0) of sequences.
 */
public final class YamlEdit {

    private final String name;
    private final String text;
    private final List<String> path;
    private final YamlText places;
    /** What the text says before. */
    private final Object before;

    private YamlEdit(String name, String text, List<String> path) {
        this.name = name;
        this.text = text;
        this.path = path;
        this.places = new YamlText(name, text);
        this.before = YamlValues.of(name, places.root());
    }

    /**
     * Puts a value where there may be one already. A key that is not there is added to its mapping, at the end: there it
     * parts no other key from the comments above it and beside it. So is a mapping of the first rank that it belongs into.
     * In a sequence, the number after the last adds to it.
     *
     * @param name of the file, for what is told
     * @param value as it is written: {@code 12.5}, {@code [3, 4]}, {@code {on: body, mass: 5}}; text as
     *     {@link YamlWords#quoted} has it
     * @throws DesignException when the text cannot be spliced there
     */
    public static String set(String name, String text, List<String> path, String value) {
        YamlEdit edit = new YamlEdit(name, text, path);
        if (value.lines().count() != 1) {
            throw edit.refused(null, "its new value must be written on one line");
        }
        String spliced = edit.put(value);
        return edit.verified(spliced, YamlValues.with(edit.before, path, edit.read(value)));
    }

    /**
     * Takes a value out, with its key; a mapping of the first rank that would be left with nothing goes with it, another
     * stays as an empty one.
     *
     * @throws DesignException when there is no such value, or the text cannot be spliced there
     */
    public static String remove(String name, String text, List<String> path) {
        YamlEdit edit = new YamlEdit(name, text, path);
        String spliced = edit.take();
        return edit.verified(spliced, YamlValues.without(edit.before, path));
    }

    /**
     * The same where comments stand between a value in braces and its neighbours: they stay, and a comma that stood before it
     * stays with them.
     *
     * @throws DesignException as {@link #remove}
     */
    static String removeKeepingComments(String name, String text, List<String> path) {
        try {
            return remove(name, text, path);
        } catch (DesignException refused) {
            YamlEdit edit = new YamlEdit(name, text, path);
            Node parent = edit.places.at(above(path));
            int number = parent instanceof MappingNode && !isBlock(parent) ? number(parent, edit.last()) : -1;
            if (parent == null || number < 0 || items(parent).size() == 1) {
                throw refused;
            }
            edit.requireAlone(path);
            int from = edit.places.start(heads(parent).get(number));
            int to = edit.places.end(items(parent).get(number));
            int next = edit.afterBlanksAndComments(to);
            boolean comma = next < text.length() && text.charAt(next) == ',';
            String behind = comma ? text.substring(to, next) + text.substring(next + 1) : text.substring(to);
            return edit.verified(text.substring(0, from) + behind, YamlValues.without(edit.before, path));
        }
    }

    private int afterBlanksAndComments(int from) {
        int at = from;
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == '#')) {
            at = text.charAt(at) == '#' ? places.lineEnd(at) : at + 1;
        }
        return at;
    }

    /** On which line a value's key stands, counted from 1; 0 when there is none. */
    public static int lineOf(String name, String text, List<String> path) {
        Node head = new YamlText(name, text).head(path);
        return head == null ? 0 : head.getStartMark().orElseThrow().getLine() + 1;
    }

    /**
     * Gives a key another name, in its place; whatever it stands for stays, with anchors that may be in it.
     *
     * @param newKey any text; it is quoted where it must be
     * @throws DesignException when there is no such key, its mapping has one of the new name, its mapping or the key is
     *     shared by an anchor, or the key is more than a word
     */
    public static String renameKey(String name, String text, List<String> path, String newKey) {
        YamlEdit edit = new YamlEdit(name, text, path);
        String spliced = edit.rename(newKey);
        return edit.verified(spliced, YamlValues.renamed(edit.before, path, newKey));
    }

    static boolean has(String name, String text, List<String> path) {
        return new YamlText(name, text).at(path) != null;
    }

    /** What stands at a path, as plain values; null when nothing does. */
    static @Nullable Object valueAt(String name, String text, List<String> path) {
        Node node = new YamlText(name, text).at(path);
        return node == null ? null : YamlValues.of(name, node);
    }

    /** All that a text says, as plain values. */
    static Object values(String name, String text) {
        return YamlValues.of(name, new YamlText(name, text).root());
    }

    private String put(String value) {
        requireAlone(path);
        Node parent = places.at(above(path));
        if (parent == null) {
            return putInNew(value);
        }
        Node old = child(parent, last());
        return old == null ? add(parent, value) : replace(parent, old, value);
    }

    private String putInNew(String value) {
        Node root = places.root();
        for (int i = 1; i < path.size(); i++) {
            boolean first = i == 1 && path.size() == 2 && root instanceof MappingNode && isBlock(root);
            if (places.at(path.subList(0, i)) == null && !first) {
                throw refused(null, "there is no \"" + path.get(i - 1) + "\" to put " + value + " into");
            }
        }
        String newline = places.newline(text.length());
        String end = text.isEmpty() || text.endsWith("\n") ? "" : newline;
        return text + end + newline + YamlWords.quoted(path.get(0)) + ":" + newline + "  " + entry(value) + newline;
    }

    private String entry(String value) {
        return YamlWords.quoted(last()) + ": " + value;
    }

    private String replace(Node parent, Node old, String value) {
        if (YamlText.isBlockOfText(old)) {
            throw refused(old, "a block of text (| or >) stands there; change it in an editor");
        }
        if (places.hasComment(old)) {
            throw refused(old, "a comment stands within it, which would be lost; change it in an editor");
        }
        if (isBlock(old)) {
            return replaceBlock(parent, number(parent, last()), value);
        }
        boolean nothing = places.start(old) == places.end(old);
        return places.with(places.start(old), places.end(old), nothing ? " " + value : value);
    }

    /** Behind the key instead of on the lines below it; comments that stand between stay. */
    private String replaceBlock(Node parent, int number, String value) {
        Node old = items(parent).get(number);
        if (!(parent instanceof MappingNode)) {
            return places.with(places.start(old), places.contentEnd(old), value);
        }
        int colon = places.end(heads(parent).get(number));
        while (colon < text.length() && Character.isWhitespace(text.charAt(colon))) {
            colon++;
        }
        int from = places.lineStart(places.start(old));
        if (colon >= from || text.charAt(colon) != ':') {
            throw notFromHere(old);
        }
        return text.substring(0, colon + 1)
                + " "
                + value
                + text.substring(colon + 1, from)
                + text.substring(places.nextLine(places.contentEnd(old)));
    }

    private String add(Node parent, String value) {
        List<Node> items = items(parent);
        if (parent instanceof SequenceNode && !last().equals(String.valueOf(items.size()))) {
            throw refused(
                    parent,
                    "a list of " + items.size() + " stands there, and only number " + items.size()
                            + ", counted from 0, can be added to it");
        }
        if (parent.getTag().equals(Tag.NULL)) {
            return addToNothing(parent, value);
        }
        if (!(parent instanceof CollectionNode<?>)) {
            throw refused(parent, "a single value stands there, nothing can be added to it");
        }
        String entry = parent instanceof SequenceNode ? value : entry(value);
        if (!isBlock(parent)) {
            // What is behind the last stays behind it; but an alias ends elsewhere.
            boolean behind =
                    !items.isEmpty() && items.get(items.size() - 1).getAnchor().isEmpty();
            int at = behind ? places.end(items.get(items.size() - 1)) : places.end(parent) - 1;
            return places.with(at, at, (items.isEmpty() ? "" : ", ") + entry);
        }
        int at = places.lineEnd(places.contentEnd(parent));
        String dash = parent instanceof SequenceNode ? "- " : "";
        return places.with(at, at, places.newline(at) + " ".repeat(YamlText.column(parent)) + dash + entry);
    }

    /** Where a mapping could be and nothing is: its first entry, on a line of its own unless brackets are around it. */
    private String addToNothing(Node nothing, String value) {
        List<String> toParent = above(path);
        Node around = toParent.isEmpty() ? null : places.at(above(toParent));
        int start = places.start(nothing);
        if (around == null || !isBlock(around) || start < places.end(nothing)) {
            boolean written = start < places.end(nothing);
            return places.with(start, places.end(nothing), (written ? "{" : " {") + entry(value) + "}");
        }
        int at = places.lineEnd(start);
        String indent = " ".repeat(YamlText.column(around) + 2);
        return places.with(at, at, places.newline(at) + indent + entry(value));
    }

    private String take() {
        Node parent = places.at(above(path));
        Node old = parent == null ? null : child(parent, last());
        if (parent == null || old == null) {
            throw refused(null, "it is not there");
        }
        requireAlone(path);
        boolean single = items(parent).size() == 1;
        boolean takesMapping = single && path.size() == 2 && parent instanceof MappingNode;
        if (items(places.root()).size() == 1 && (path.size() == 1 || takesMapping)) {
            throw refused(old, "it is all that the file says, and an empty file cannot be read");
        }
        if (takesMapping) {
            return takeWithItsMapping(parent, old);
        }
        if (!isBlock(parent)) {
            return takeFromFlow(parent, number(parent, last()));
        }
        if (single && path.size() > 1) {
            String empty = parent instanceof MappingNode ? "{}" : "[]";
            Node above = Objects.requireNonNull(places.at(above(above(path))));
            return replaceBlock(above, number(above, path.get(path.size() - 2)), empty);
        }
        return takeFromBlock(parent, number(parent, last()));
    }

    private String takeWithItsMapping(Node mapping, Node old) {
        Node root = places.root();
        int number = number(root, path.get(0));
        if (!isBlock(root)) {
            return takeFromFlow(root, number);
        }
        if (!isBlock(mapping)) {
            return takeFromBlock(root, number);
        }
        // Comments between the two keys stay.
        int key = places.start(heads(root).get(number));
        int entry = places.lineStart(places.start(heads(mapping).get(0)));
        return text.substring(0, places.lineStart(key))
                + text.substring(Math.min(places.nextLine(key), entry), entry)
                + text.substring(places.nextLine(places.contentEnd(old)));
    }

    private String takeFromBlock(Node parent, int number) {
        int from = places.entryStart(parent, number);
        int to = places.contentEnd(items(parent).get(number));
        if (to < from) {
            throw notFromHere(parent);
        }
        if (places.isBlank(places.lineStart(from), from)) {
            return places.with(places.lineStart(from), places.nextLine(to), "");
        }
        // Another entry begins on the line, as in "- a: 1": the next one takes the place.
        boolean follows = number + 1 < items(parent).size();
        int next = follows ? places.entryStart(parent, number + 1) : 0;
        if (!follows || next < to || !places.isBlank(places.lineEnd(to), next)) {
            throw notFromHere(parent);
        }
        return places.with(from, next, "");
    }

    private String takeFromFlow(Node parent, int number) {
        Node old = items(parent).get(number);
        int key = places.start(heads(parent).get(number));
        int from = key;
        int to = places.end(old);
        int comma = text.indexOf(',', to);
        boolean follows = number < items(parent).size() - 1;
        boolean trails = number == 0 && comma >= 0 && comma < places.end(parent) && places.isBlank(to, comma);
        if (follows || trails) {
            to = Math.max(to, comma + 1);
            while (to < text.length() && (text.charAt(to) == ' ' || text.charAt(to) == '\t')) {
                to++;
            }
        } else if (number > 0) {
            from = places.end(items(parent).get(number - 1));
        }
        if (from > key || from < places.start(parent)) {
            // Its neighbour is an alias and ends somewhere else.
            from = text.lastIndexOf(',', key - 1);
        }
        String between = text.substring(from, key) + text.substring(places.end(old), to);
        if (between.contains("#")) {
            throw refused(old, "a comment stands between it and its neighbour; take it out in an editor");
        }
        return places.with(from, to, "");
    }

    private String rename(String newKey) {
        Node parent = places.at(above(path));
        Node value = parent == null ? null : child(parent, last());
        if (parent == null || value == null) {
            throw refused(null, "it is not there");
        }
        if (!(parent instanceof MappingNode)) {
            throw refused(value, "it stands in a list, where nothing has a name");
        }
        requireAlone(above(path));
        if (child(parent, newKey) != null) {
            throw refused(value, "there is a \"" + newKey + "\" already; choose another name");
        }
        ScalarNode key = (ScalarNode) heads(parent).get(number(parent, last()));
        requireNoAnchor(key);
        if (YamlText.isBlockOfText(key)) {
            throw notFromHere(key);
        }
        boolean bare = key.getScalarStyle() == ScalarStyle.PLAIN;
        String words = bare ? YamlWords.quoted(newKey) : YamlWords.inQuotes(newKey);
        return places.with(places.start(key), places.end(key), words);
    }

    /** What was spliced must read as the old text with that one change. */
    private String verified(String spliced, Object meant) {
        boolean asMeant;
        try {
            asMeant = YamlValues.same(meant, read(spliced));
        } catch (DesignException e) {
            asMeant = false;
        }
        if (!asMeant) {
            throw notFromHere(places.at(path));
        }
        return spliced;
    }

    private Object read(String yaml) {
        return values(name, yaml);
    }

    private static List<String> above(List<String> path) {
        return path.subList(0, Math.max(0, path.size() - 1));
    }

    private String last() {
        return path.get(path.size() - 1);
    }

    /** An anchored value is the value of other places too, and so is all that stands in it. */
    private void requireAlone(List<String> path) {
        for (int i = 0; i <= path.size(); i++) {
            Node node = places.at(path.subList(0, i));
            if (node != null) {
                requireNoAnchor(node);
            }
        }
    }

    private void requireNoAnchor(Node node) {
        if (node.getAnchor().isPresent()) {
            throw refused(
                    node,
                    "it is shared by an anchor (&) or alias (*) and cannot be changed without changing other values;"
                            + " write it out in an editor first");
        }
    }

    private DesignException notFromHere(@Nullable Node at) {
        return refused(at, "it is written in a way that cannot be changed from here; change it in an editor");
    }

    private DesignException refused(@Nullable Node at, String reason) {
        int line = at == null ? 0 : at.getStartMark().orElseThrow().getLine() + 1;
        int column = at == null ? 0 : YamlText.column(at) + 1;
        return new DesignException(List.of(
                new Problem(name, line, column, "\"" + String.join(".", path) + "\" is left as it is: " + reason)));
    }
}
