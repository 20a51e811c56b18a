package jackwork.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A YAML text made at random, and what stands on which of its lines. Each key and each single value carries a number by
 * which it is found in the text again.
 */
final class RandomYaml {

    enum Kind {
        WORD,
        NOTHING,
        BLOCK_OF_TEXT,
        FLOW_MAPPING,
        FLOW_LIST,
        BLOCK_MAPPING,
        BLOCK_LIST,
        ALIAS;

        boolean isMapping() {
            return this == FLOW_MAPPING || this == BLOCK_MAPPING;
        }

        boolean isList() {
            return this == FLOW_LIST || this == BLOCK_LIST;
        }

        boolean isBlock() {
            return this == BLOCK_MAPPING || this == BLOCK_LIST;
        }
    }

    /** One value with its key; the whole text is one, without a key. */
    static final class Item {
        final Item above;
        final List<String> path;
        Kind kind = Kind.WORD;
        /** As it is written; empty in a list. */
        String key = "";
        /** As it is written, of a single value. */
        String words = "";
        /** Lines that it stands on, from 0; of a block without the comments around it. */
        int first;

        int last;
        boolean inFlow;
        /** On the line of a list's dash, as a mapping's first key is. */
        boolean onDash;
        /** By an anchor, or as a part of what is. */
        boolean shared;

        final List<Item> items = new ArrayList<>();

        private Item() {
            above = this;
            path = List.of();
        }

        private Item(Item above, String word) {
            this.above = above;
            this.path = new ArrayList<>(above.path);
            path.add(word);
            this.shared = above.shared;
            this.inFlow = above.inFlow || above.kind == Kind.FLOW_MAPPING || above.kind == Kind.FLOW_LIST;
            above.items.add(this);
        }

        boolean isNamed() {
            return !key.isEmpty();
        }

        boolean hasAnchor() {
            return shared || items.stream().anyMatch(Item::hasAnchor);
        }

        boolean endsInAlias() {
            return kind == Kind.ALIAS
                    || (kind.isBlock() && items.get(items.size() - 1).endsInAlias());
        }

        /** Whether a comment stands within it, and not only behind it. */
        boolean hasComment(String text) {
            if (!kind.isBlock()) {
                return COMMENT.matcher(words).find();
            }
            List<String> lines = text.lines().toList().subList(items.get(0).first, last + 1);
            String within = String.join("\n", lines).replaceFirst(COMMENT + "\\z", "");
            return COMMENT.matcher(within).find();
        }
    }

    private static final Pattern COMMENT = Pattern.compile("# (said|why|above|of the former)\\V*");

    private final Random random;
    private final StringBuilder out = new StringBuilder();
    private final List<Item> all = new ArrayList<>();
    private final Item root = new Item();
    private final List<String> anchors = new ArrayList<>();
    private int number;

    RandomYaml(Random random) {
        this.random = random;
        root.kind = Kind.BLOCK_MAPPING;
        if (chance(5)) {
            out.append("# the whole\n---\n");
        }
        blockMapping(root, 0, false);
        root.last = root.items.get(root.items.size() - 1).last;
        if (chance(3)) {
            out.append("# the end\n");
        }
        if (chance(4)) {
            out.setLength(out.length() - 1);
        }
    }

    Item root() {
        return root;
    }

    /** All but the root. */
    List<Item> all() {
        return all;
    }

    /** With one line end throughout, or with both. */
    String text() {
        String text = out.toString();
        int ends = random.nextInt(6);
        if (ends > 1) {
            return text;
        }
        return ends == 1
                ? text.replace("\n", "\r\n")
                : text.lines()
                        .map(line -> line + (random.nextBoolean() ? "\n" : "\r\n"))
                        .collect(Collectors.joining());
    }

    private boolean chance(int in) {
        return random.nextInt(in) == 0;
    }

    private int line() {
        return (int) out.chars().filter(letter -> letter == '\n').count();
    }

    private String next() {
        return String.format(Locale.ROOT, "%04d", ++number);
    }

    private void blockMapping(Item mapping, int indent, boolean afterDash) {
        int size = 1 + random.nextInt(mapping == root ? 5 : 3);
        for (int i = 0; i < size; i++) {
            boolean onDash = afterDash && i == 0;
            if (!onDash) {
                comments(indent);
                out.append(" ".repeat(indent));
            }
            Item item = named(mapping);
            item.onDash = onDash;
            out.append(item.key).append(':');
            value(item, indent);
        }
    }

    private void blockList(Item list, int indent) {
        int size = 1 + random.nextInt(3);
        for (int i = 0; i < size; i++) {
            comments(indent);
            Item item = new Item(list, String.valueOf(i));
            all.add(item);
            item.first = line();
            out.append(" ".repeat(indent)).append('-');
            if (indent < 6 && chance(4)) {
                item.kind = Kind.BLOCK_MAPPING;
                out.append(' ');
                blockMapping(item, indent + 2, true);
                item.last = item.items.get(item.items.size() - 1).last;
            } else {
                value(item, indent);
            }
        }
    }

    private Item named(Item mapping) {
        String count = next();
        String style = List.of("key-N", "key N", "\"key N\"", "'key N'", "käy𝄞N", "\"N\"")
                .get(random.nextInt(6));
        String key = style.replace("N", count);
        Item item = new Item(mapping, key.replaceAll("[\"']", ""));
        item.key = key;
        item.first = line();
        all.add(item);
        return item;
    }

    /** Behind a colon or a dash, with the end of the line. */
    private void value(Item item, int indent) {
        int kind = random.nextInt(12);
        if (kind == 0) {
            item.kind = Kind.NOTHING;
            out.append(trailing(false));
        } else if (kind == 1) {
            item.kind = Kind.BLOCK_OF_TEXT;
            String lines = " ".repeat(indent + 2) + "text " + next() + "\n";
            out.append(chance(2) ? " |\n" : " >-\n").append(lines).append(chance(2) ? "" : lines);
        } else if (kind == 2 && !anchors.isEmpty()) {
            item.kind = Kind.ALIAS;
            item.shared = true;
            out.append(" *").append(anchors.get(0)).append(trailing(true));
        } else if (kind <= 4 && indent < 6 && item.isNamed()) {
            item.kind = Kind.BLOCK_MAPPING;
            out.append(trailing(false));
            blockMapping(item, indent + 2 + 2 * random.nextInt(2), false);
        } else if (kind <= 6 && indent < 6 && item.isNamed()) {
            item.kind = Kind.BLOCK_LIST;
            out.append(trailing(false));
            blockList(item, indent + 2 * random.nextInt(2));
        } else {
            out.append(' ');
            if (chance(12)) {
                item.shared = true;
                anchors.add("a" + next());
                out.append('&').append(anchors.get(anchors.size() - 1)).append(' ');
            }
            inline(item, kind <= 8, indent);
            out.append(trailing(false));
        }
        item.last = item.kind.isBlock() ? item.items.get(item.items.size() - 1).last : line() - 1;
    }

    private void inline(Item item, boolean brackets, int indent) {
        if (!brackets || item.path.size() > 5) {
            item.words = word();
            out.append(item.words);
            return;
        }
        boolean mapping = chance(2);
        item.kind = mapping ? Kind.FLOW_MAPPING : Kind.FLOW_LIST;
        int begins = out.length();
        out.append(mapping ? '{' : '[');
        int size = random.nextInt(4);
        for (int i = 0; i < size; i++) {
            if (i > 0) {
                out.append(chance(4) ? ",\t" : ", ");
                if (chance(6)) {
                    out.append("# of the former\n").append(" ".repeat(indent + 4));
                } else if (chance(6)) {
                    out.append("\n").append(" ".repeat(indent + 4));
                }
            }
            Item inner;
            if (mapping) {
                inner = named(item);
                out.append(inner.key).append(": ");
            } else {
                inner = new Item(item, String.valueOf(i));
                inner.first = line();
                all.add(inner);
            }
            inline(inner, chance(3), indent);
            inner.last = line();
        }
        out.append(chance(8) && size > 0 ? "," : "").append(mapping ? '}' : ']');
        item.words = out.substring(begins);
    }

    private String word() {
        String form = List.of("wN", "9N", "'it''s N'", "\"ä𝄞 \\\" N # no\"", "plain words N", "-0.5N")
                .get(random.nextInt(6));
        return form.replace("N", next());
    }

    private String trailing(boolean alias) {
        // The library takes tabs behind plain words only.
        String tab = Character.isLetterOrDigit(out.charAt(out.length() - 1)) && !alias ? "\t" : " ";
        return List.of("\n", "\n", "  # said\n", tab + "# why: [x\n", "  \n").get(random.nextInt(5));
    }

    private void comments(int indent) {
        if (chance(4)) {
            out.append(chance(2) ? "\n" : " ".repeat(indent) + "# above, as in a: {b}\n");
        }
    }
}
