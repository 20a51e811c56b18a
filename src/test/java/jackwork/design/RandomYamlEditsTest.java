package jackwork.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Random edits of random texts: what comes out says what was said with that one change, in the same order, and every line
 * that the change does not touch is as it was, comments with it. What is refused, and why, is foretold from how the text
 * was made. Trees are read by the library's own loader.
 */
class RandomYamlEditsTest {

    private static final int TEXTS = 4000;
    private static final List<String> VALUES = List.of(
            "7", "[5, 6]", "{on: body, mass: 5}", "new", YamlWords.quoted("no"), YamlWords.quoted("# a: \"b\", [c\n"));

    private final Random random = new Random(190_119);
    private final Map<String, Integer> done = new TreeMap<>();

    @Test
    void oneChangeAndNothingElse() {
        for (int i = 0; i < TEXTS; i++) {
            RandomYaml made = new RandomYaml(random);
            String text = made.text();
            for (int k = 0; k < 3; k++) {
                RandomYaml.Item item = made.all().get(random.nextInt(made.all().size()));
                switch (random.nextInt(4)) {
                    case 0 -> set(text, item);
                    case 1 -> add(text, random.nextInt(4) == 0 ? made.root() : item);
                    case 2 -> remove(text, made, item);
                    default -> rename(text, item);
                }
            }
        }
        assertThat(done).hasEntrySatisfying("rename", often -> assertThat(often).isGreaterThan(1000));
        for (RandomYaml.Kind kind : RandomYaml.Kind.values()) {
            if (kind != RandomYaml.Kind.ALIAS) {
                assertThat(done.getOrDefault("remove " + kind, 0))
                        .as("remove %s", kind)
                        .isGreaterThan(100);
            }
            if (kind.isList() || kind.isMapping()) {
                assertThat(done.getOrDefault("add to " + kind, 0))
                        .as("add to %s", kind)
                        .isGreaterThan(80);
                assertThat(done.getOrDefault("set " + kind, 0))
                        .as("set %s", kind)
                        .isGreaterThan(60);
            }
        }
        int excused = done.entrySet().stream()
                .filter(entry -> entry.getKey().startsWith("excused"))
                .mapToInt(Map.Entry::getValue)
                .sum();
        assertThat(excused).isLessThan(TEXTS * 3 / 50);
    }

    private void set(String text, RandomYaml.Item item) {
        String value = VALUES.get(random.nextInt(VALUES.size()));
        String refusal = "";
        if (item.shared) {
            refusal = "anchor";
        } else if (item.kind == RandomYaml.Kind.BLOCK_OF_TEXT) {
            refusal = "block of text";
        } else if (item.hasComment(text)) {
            refusal = "comment stands within";
        }
        String after = tried(
                "set " + item.kind,
                refusal,
                excuse(text, item),
                text,
                () -> YamlEdit.set("x.yaml", text, item.path, value));
        if (after.isEmpty()) {
            return;
        }
        require(text, after, tree -> put(tree, item.path, load(value)));
        if (text.contains(item.words)
                && !item.words.isEmpty()
                && text.indexOf(item.words) == text.lastIndexOf(item.words)) {
            assertThat(after).isEqualTo(text.replace(item.words, value));
        } else if (item.kind == RandomYaml.Kind.NOTHING && item.isNamed()) {
            assertThat(after).isEqualTo(text.replace(item.key + ":", item.key + ": " + value));
        } else {
            sameAround(text, after, item.first, item.last);
        }
    }

    private void add(String text, RandomYaml.Item item) {
        String value = VALUES.get(random.nextInt(VALUES.size()));
        boolean list = item.kind.isList();
        String word = list
                ? String.valueOf(item.items.size())
                : List.of("fresh", "no", "a: b").get(random.nextInt(3));
        List<String> path = new ArrayList<>(item.path);
        path.add(word);
        String refusal = "";
        if (item.shared) {
            refusal = "anchor";
        } else if (item.kind == RandomYaml.Kind.WORD || item.kind == RandomYaml.Kind.BLOCK_OF_TEXT) {
            refusal = "nothing can be added";
        }
        String after = tried(
                "add to " + item.kind,
                refusal,
                excuse(text, item),
                text,
                () -> YamlEdit.set("x.yaml", text, path, value));
        if (after.isEmpty()) {
            return;
        }
        require(text, after, tree -> put(tree, path, load(value)));
        String entry = (list ? "" : YamlWords.quoted(word) + ": ") + value;
        if (item.kind.isBlock()) {
            List<String> lines = new ArrayList<>(after.lines().toList());
            String whole = list ? "- " + entry : entry;
            assertThat(lines.remove(firstDifference(text, after)).strip()).isEqualTo(whole);
            assertThat(lines).isEqualTo(text.lines().toList());
        } else {
            sameAround(text, after, item.first, item.last);
            assertThat(after.length() - text.length()).isBetween(entry.length(), entry.length() + 16);
            assertThat(after).contains(entry);
        }
    }

    private void remove(String text, RandomYaml made, RandomYaml.Item item) {
        RandomYaml.Item above = item.above;
        boolean single = above.items.size() == 1;
        boolean takesMapping = single && item.path.size() == 2 && above.kind.isMapping();
        String refusal = "";
        if (made.root().items.size() == 1 && (item.path.size() == 1 || takesMapping)) {
            refusal = item.shared ? "anchor" : "all that the file says";
        } else if (item.shared) {
            refusal = "anchor";
        }
        String after = tried(
                "remove " + item.kind,
                refusal,
                excuse(text, item),
                text,
                () -> YamlEdit.remove("x.yaml", text, item.path));
        if (after.isEmpty()) {
            return;
        }
        require(text, after, tree -> take(tree, item.path));
        List<String> kept = new ArrayList<>(text.lines().toList());
        RandomYaml.Item whole = takesMapping && !above.kind.isBlock() ? above : item;
        if (whole.inFlow || whole.onDash) {
            RandomYaml.Item around = whole.above;
            while (around.inFlow) {
                around = around.above;
            }
            sameAround(text, after, around.first, around.last);
            return;
        }
        kept.subList(whole.first, whole.last + 1).clear();
        if (takesMapping && above.kind.isBlock()) {
            kept.remove(above.first);
        } else if (single && above.isNamed()) {
            String empty = above.kind.isMapping() ? ": {}" : ": []";
            kept.replaceAll(line -> line.replace(above.key + ":", above.key + empty));
        }
        assertThat(after.lines().toList()).isEqualTo(kept);
    }

    private void rename(String text, RandomYaml.Item item) {
        String key = List.of("fresh", "two words", "no", "a: b", "12").get(random.nextInt(5));
        String refusal = "";
        if (!item.isNamed()) {
            refusal = "in a list";
        } else if (item.above.shared) {
            refusal = "anchor";
        }
        String after =
                tried("rename", refusal, "no excuse", text, () -> YamlEdit.renameKey("x.yaml", text, item.path, key));
        if (after.isEmpty()) {
            return;
        }
        require(text, after, tree -> renamed(tree, item.path, key));
        boolean bare = !item.key.startsWith("\"") && !item.key.startsWith("'");
        String written = bare ? YamlWords.quoted(key) : YamlWords.inQuotes(key);
        assertThat(after).isEqualTo(text.replace(item.key + ":", written + ":"));
    }

    private interface Change {
        Object of(Object tree);
    }

    private interface Edit {
        String make();
    }

    /** What may be given as a reason where it is not foretold for certain whether the text can be changed there. */
    private static String excuse(String text, RandomYaml.Item item) {
        String last = text.lines().toList().get(item.last);
        if (item.inFlow && text.contains("# of the former")) {
            return "comment stands between";
        }
        // The library reads no tab behind a bracket, and does not tell where an alias ends. What other places are
        // shares
        // of cannot go, and a block of text at the end without a line's end would get one.
        boolean strange =
                last.contains("\t") || item.endsInAlias() || item.onDash || item.hasAnchor() || endsInText(text, item);
        return strange ? "written in a way" : "no excuse";
    }

    private static boolean endsInText(String text, RandomYaml.Item item) {
        return item.last == text.lines().count() - 1
                && !text.endsWith("\n")
                && lastOf(item).kind == RandomYaml.Kind.BLOCK_OF_TEXT;
    }

    private static RandomYaml.Item lastOf(RandomYaml.Item item) {
        return item.kind.isBlock() ? lastOf(item.items.get(item.items.size() - 1)) : item;
    }

    /** The text after an edit; empty when it was refused as it must be, or with an excuse. */
    private String tried(String what, String refusal, String excuse, String text, Edit edit) {
        try {
            String after = edit.make();
            assertThat(refusal).as("%s must be refused in%n%s", what, text).isEmpty();
            done.merge(what, 1, Integer::sum);
            return after;
        } catch (DesignException e) {
            String told = e.getMessage();
            done.merge((refusal.isEmpty() ? "excused: " : "refused: ") + what, 1, Integer::sum);
            assertThat(told).as("%s refused in%n%s", what, text).contains(refusal.isEmpty() ? excuse : refusal);
            return "";
        }
    }

    private static void require(String text, String after, Change change) {
        assertThat(inOrder(load(after)))
                .as("%s%n-- after --%n%s", text, after)
                .isEqualTo(inOrder(change.of(load(text))));
    }

    private static Object load(String yaml) {
        return new Load(LoadSettings.builder().build()).loadFromString(yaml);
    }

    /** Mappings as lists of pairs, so that order counts. */
    private static Object inOrder(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            List<Object> pairs = new ArrayList<>();
            map.forEach((key, value) -> pairs.add(List.of("entry", inOrder(key), inOrder(value))));
            return pairs;
        }
        return tree instanceof List<?> list
                ? list.stream().map(RandomYamlEditsTest::inOrder).toList()
                : String.valueOf(tree) + (tree == null ? "" : tree.getClass());
    }

    private static Object above(Object tree, List<String> path) {
        Object at = tree;
        for (String word : path.subList(0, path.size() - 1)) {
            at = at instanceof List<?> list ? list.get(Integer.parseInt(word)) : ((Map<?, ?>) at).get(word);
        }
        return at;
    }

    @SuppressWarnings("unchecked")
    private static Object put(Object tree, List<String> path, Object value) {
        String word = path.get(path.size() - 1);
        Object above = above(tree, path);
        if (above instanceof List<?> list) {
            List<Object> items = (List<Object>) list;
            if (Integer.parseInt(word) == items.size()) {
                items.add(value);
            } else {
                items.set(Integer.parseInt(word), value);
            }
        } else if (above == null) {
            put(tree, path.subList(0, path.size() - 1), new LinkedHashMap<>(Map.of(word, value)));
        } else {
            ((Map<Object, Object>) above).put(word, value);
        }
        return tree;
    }

    private static Object take(Object tree, List<String> path) {
        String word = path.get(path.size() - 1);
        Object above = above(tree, path);
        if (above instanceof List<?> list) {
            list.remove(Integer.parseInt(word));
        } else {
            ((Map<?, ?>) above).remove(word);
            if (path.size() == 2 && ((Map<?, ?>) above).isEmpty()) {
                ((Map<?, ?>) tree).remove(path.get(0));
            }
        }
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static Object renamed(Object tree, List<String> path, String key) {
        Map<Object, Object> map = (Map<Object, Object>) above(tree, path);
        Map<Object, Object> before = new LinkedHashMap<>(map);
        map.clear();
        before.forEach((name, value) -> map.put(name.equals(path.get(path.size() - 1)) ? key : name, value));
        return tree;
    }

    /** The first line in which two texts differ. */
    private static int firstDifference(String text, String after) {
        List<String> old = text.lines().toList();
        List<String> now = after.lines().toList();
        int at = 0;
        while (at < old.size() && old.get(at).equals(now.get(at))) {
            at++;
        }
        return at;
    }

    /** All lines before some and behind some are as they were. */
    private static void sameAround(String text, String after, int first, int last) {
        List<String> old = text.lines().toList();
        List<String> now = after.lines().toList();
        int behind = old.size() - last - 1;
        assertThat(now.subList(0, first)).isEqualTo(old.subList(0, first));
        assertThat(now.subList(now.size() - behind, now.size())).isEqualTo(old.subList(last + 1, old.size()));
    }
}
