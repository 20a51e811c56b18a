package jackwork.design;

import static jackwork.design.YamlText.child;
import static jackwork.design.YamlText.heads;
import static jackwork.design.YamlText.items;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A file's text of an earlier format as one of today's: its number, and without the keys that went. Every other character
 * stays.
 *
 * @param gone what could not be carried over, in the order of the file
 */
public record RenewedText(String text, List<Gone> gone) {

    private static final List<String> FORMAT = List.of("format");
    private static final String CHANGE = "change";

    /**
     * A key that is known no longer.
     *
     * @param line where it stood, counted from 1
     * @param key its last two words: {@code bucket.clearance}
     * @param value as it was written
     * @param now what became of it, as the rest of a sentence about it
     * @param by the number of {@code workshop.yaml} that decides it instead; empty when none does
     */
    public record Gone(int line, String key, String value, String now, String by) {}

    /** A former key and where it stands. */
    private record Place(List<String> path, Former former) {}

    /**
     * @param name of the file, for what is told
     * @throws DesignException when it is written in a way that cannot be changed from here
     */
    public static RenewedText of(FileKind kind, String name, String text) {
        YamlText places = new YamlText(name, text);
        List<Place> found = new ArrayList<>();
        find(places.root(), kind.record(), List.of(), found);
        if (kind == FileKind.DESIGN) {
            findInChanges(places.root(), found);
        }
        List<Gone> gone = found.stream()
                .map(place -> gone(places, text, place))
                .sorted(Comparator.comparingInt(Gone::line))
                .toList();
        String now = YamlEdit.set(name, text, FORMAT, String.valueOf(Format.NOW));
        for (Place place : found) {
            now = YamlEdit.removeKeepingComments(name, now, place.path());
        }
        return new RenewedText(now, gone);
    }

    private static Gone gone(YamlText places, String text, Place place) {
        List<String> path = place.path();
        Node value = places.at(path);
        Node head = places.head(path);
        if (value == null || head == null) {
            throw new IllegalStateException(String.join(".", path));
        }
        String written = text.substring(places.start(value), Math.max(places.start(value), places.contentEnd(value)));
        return new Gone(
                head.getStartMark().orElseThrow().getLine() + 1,
                key(path),
                written.replaceAll("\\s+", " ").strip(),
                place.former().now(),
                place.former().by());
    }

    private static String key(List<String> path) {
        List<String> words = Stream.of(String.join(".", path).split("\\.")).toList();
        return String.join(".", words.subList(Math.max(0, words.size() - 2), words.size()));
    }

    /** Former keys of all records in a tree, by the words that it may have. */
    private static void find(Node node, Class<?> record, List<String> path, List<Place> found) {
        if (!(node instanceof MappingNode)) {
            return;
        }
        for (Former former : Vocabulary.former(record)) {
            if (child(node, former.key()) != null) {
                found.add(new Place(below(path, former.key()), former));
            }
        }
        for (Word word : Vocabulary.flat(record)) {
            Node value = child(node, word.key());
            if (value != null && Vocabulary.isBound(word.leaf())) {
                findAll(value, word, below(path, word.key()), found);
            }
        }
    }

    /** In a record, or in each of a map or list of them. */
    private static void findAll(Node value, Word word, List<String> path, List<Place> found) {
        if (!word.isMap() && !word.isList()) {
            find(value, word.leaf(), path, found);
            return;
        }
        for (int i = 0; i < items(value).size(); i++) {
            String name = value instanceof SequenceNode
                    ? String.valueOf(i)
                    : heads(value).get(i) instanceof ScalarNode key ? key.getValue() : "";
            find(items(value).get(i), word.leaf(), below(path, name), found);
        }
    }

    /** A design's changes name places of its box and figure, and may put a whole mapping there. */
    private static void findInChanges(Node root, List<Place> found) {
        Node changes = child(root, CHANGE);
        if (!(changes instanceof MappingNode)) {
            return;
        }
        for (int i = 0; i < items(changes).size(); i++) {
            if (heads(changes).get(i) instanceof ScalarNode key) {
                List<String> words = List.of(key.getValue().split("\\.", -1));
                List<String> path = List.of(CHANGE, key.getValue());
                Node value = items(changes).get(i);
                if (words.get(0).equals("box")) {
                    follow(BoxFile.class, words.subList(1, words.size()), value, path, found);
                } else if (words.get(0).equals("figure")) {
                    follow(FigureFile.class, words.subList(1, words.size()), value, path, found);
                }
            }
        }
    }

    /** Down the words of a change to what its value is. */
    private static void follow(Class<?> record, List<String> words, Node value, List<String> path, List<Place> found) {
        if (words.isEmpty()) {
            find(value, record, path, found);
            return;
        }
        String first = words.get(0);
        List<String> rest = words.subList(1, words.size());
        for (Former former : Vocabulary.former(record)) {
            if (former.key().equals(first)) {
                found.add(new Place(path, former));
                return;
            }
        }
        for (Word word : Vocabulary.flat(record)) {
            if (word.key().equals(first) && Vocabulary.isBound(word.leaf())) {
                boolean many = word.isMap() || word.isList();
                if (many && rest.isEmpty()) {
                    findAll(value, word, path, found);
                } else {
                    follow(word.leaf(), many ? rest.subList(1, rest.size()) : rest, value, path, found);
                }
            }
        }
    }

    private static List<String> below(List<String> path, String word) {
        List<String> longer = new ArrayList<>(path);
        longer.add(word);
        return List.copyOf(longer);
    }
}
