package jackwork.design;

import jackwork.drawing.Drawing;
import java.util.List;

/**
 * Gives an entry of a box's or figure's file another name, wherever it is named. What the drawing knows by the old name is
 * still found there: the entry says so from then on.
 */
final class Renaming {

    private final Design design;
    private final DesignTexts texts;

    Renaming(Design design, DesignTexts texts) {
        this.design = design;
        this.texts = texts;
    }

    /**
     * @param file box or figure
     * @throws DesignException when there is no such entry, or something is called that already
     */
    void entry(String file, String section, String name, String other) {
        List<String> path = List.of(section, name);
        if (!texts.has(file, path)) {
            throw DesignException.of(file + "." + section + "." + name, "there is no such entry to rename");
        }
        Word word = Vocabulary.flat(Vocabulary.file(file)).stream()
                .filter(one -> one.key().equals(section))
                .findFirst()
                .orElseThrow();
        if (word.names().isPresent()) {
            throw DesignException.of(
                    file + "." + section + "." + name, "it goes by the name of what it is on; rename that");
        }
        requireFree(file, section, other);
        keepDrawn(file, section, name, word);
        NameKind.ofSection(section).ifPresent(kind -> {
            for (DesignTexts.Named named : texts.mentions(file, kind, name)) {
                if (!named.mention().isKey()) {
                    texts.set(named.file(), named.mention().path(), YamlWords.quoted(other));
                } else if (!texts.has(named.file(), named.mention().path())) {
                    throw new IllegalStateException("a key that is not there: " + named.mention());
                } else {
                    texts.renameKey(named.file(), named.mention().path(), other);
                }
            }
        });
        key(file, section, name, other);
        if (section.equals("mounts")) {
            key(file.equals(DesignTexts.BOX) ? DesignTexts.FIGURE : DesignTexts.BOX, section, name, other);
        }
    }

    private void key(String file, String section, String name, String other) {
        if (texts.has(file, List.of(section, name))) {
            texts.renameKey(file, List.of(section, name), other);
        }
        String before = file + "." + section + "." + name;
        for (String change : texts.changesBelow(before)) {
            texts.renameKey(
                    DesignTexts.DESIGN,
                    List.of("change", change),
                    file + "." + section + "." + other + change.substring(before.length()));
        }
        texts.adjustersBelow(before)
                .forEach((adjuster, number) -> texts.set(
                        DesignTexts.DESIGN,
                        List.of("adjusters", adjuster, "number"),
                        file + "." + section + "." + other + number.substring(before.length())));
    }

    /** Parts, pins and gears of box and figure are called differently: a figure may name what is in the box. */
    private void requireFree(String file, String section, String other) {
        boolean shared = NameKind.ofSection(section).isPresent();
        for (String in : List.of(DesignTexts.BOX, DesignTexts.FIGURE)) {
            if ((in.equals(file) || shared) && texts.has(in, List.of(section, other))) {
                throw DesignException.of(
                        file + "." + section + "." + other,
                        "the " + in + " has one of that name already; choose another name");
            }
        }
    }

    /** What goes by the entry's own name in the drawing is written out, so that it is still found. */
    private void keepDrawn(String file, String section, String name, Word word) {
        Drawing drawing = file.equals(DesignTexts.BOX) ? design.boxDrawing() : design.figureDrawing();
        if (section.equals("parts")) {
            if (!texts.has(file, List.of(section, name, "drawn"))
                    && drawing.outlines().containsKey(name)) {
                texts.set(file, List.of(section, name, "drawn"), YamlWords.quoted(name));
            }
            return;
        }
        keepCircle(file, section, name, word, drawing);
        if (section.equals("mounts")) {
            boolean ofBox = file.equals(DesignTexts.BOX);
            keepCircle(
                    ofBox ? DesignTexts.FIGURE : DesignTexts.BOX,
                    section,
                    name,
                    word,
                    ofBox ? design.figureDrawing() : design.boxDrawing());
        }
    }

    private void keepCircle(String file, String section, String name, Word word, Drawing drawing) {
        for (Word inner : Vocabulary.flat(word.leaf())) {
            List<String> at = List.of(section, name, inner.key());
            if (inner.isOwnCircle()
                    && texts.has(file, List.of(section, name))
                    && !texts.has(file, at)
                    && drawing.circles().containsKey(name)) {
                texts.set(file, at, YamlWords.quoted(name));
            }
        }
    }
}
