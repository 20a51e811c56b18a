package jackwork.app.workshop;

import jackwork.app.core.FlowText;
import jackwork.app.wire.BadRequestException;
import jackwork.design.DesignEdit;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.design.WorkshopSplice;
import jackwork.design.YamlWords;
import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A change of {@code workshop.yaml} as the file's new text. */
final class WorkshopSteps {

    /** Where the maker may add entries under names of his own. */
    private static final Pattern ADDABLE = Pattern.compile("(sheets|rods|cords|have|laser\\.lines|pay\\.prices"
            + "|pay\\.channels\\.(outright|commission|web|fair))\\.[^.\\p{Cntrl}]{1,60}|pay\\.bands\\.\\d{1,3}"
            + "|friction\\.[a-z-]{1,40},[a-z-]{1,40}");

    private static final int LONGEST = 2000;

    private WorkshopSteps() {}

    /**
     * @throws jackwork.design.DesignException when it cannot be written there, or is no workshop any more
     * @throws BadRequestException when there is nothing of that path to change
     */
    static String apply(String text, WorkshopStep step) {
        if (step.value().toString().length() > LONGEST
                || step.source().length() > LONGEST
                || step.path().length() > LONGEST) {
            throw new BadRequestException("expected fewer than " + LONGEST + " letters");
        }
        return switch (step.kind()) {
            case SET -> set(text, find(text, step.path()), step);
            case ADD -> {
                if (!ADDABLE.matcher(step.path()).matches()) {
                    throw new BadRequestException("nothing can be added at \"" + step.path() + "\"");
                }
                yield step.path().startsWith("friction.")
                        ? friction(text, step)
                        : WorkshopSplice.value(text, step.path(), FlowText.of(step.value()));
            }
            case REMOVE -> remove(text, step.path());
        };
    }

    private static String set(String text, WorkshopView.Value value, WorkshopStep step) {
        return switch (value.kind()) {
            case NUMBER ->
                step.path().startsWith("friction.")
                        ? friction(text, step)
                        : number(text, step.path(), typed(value.unit(), step));
            case PLAIN ->
                WorkshopSplice.value(
                        text,
                        step.path(),
                        words(WorkshopSplice.number(plain(value.unit()), value.name(), words(step))));
            case SIZE ->
                WorkshopSplice.value(
                        text,
                        step.path(),
                        Arrays.stream(words(step).split(",", -1))
                                .map(side -> words(WorkshopSplice.number(plain(value.unit()), value.name(), side)))
                                .collect(Collectors.joining(", ", "[", "]")));
            case YES_NO -> WorkshopSplice.value(text, step.path(), words(step).equals("yes") ? "true" : "false");
            case WORD ->
                WorkshopSplice.value(
                        text, step.path(), YamlWords.quoted(words(step).strip()));
        };
    }

    /** What something holds says nothing without its price. */
    private static String number(String text, String path, Uncertain number) {
        if (path.startsWith("pay.prices.") && path.endsWith(".holds")) {
            String price = path.substring(0, path.length() - "holds".length()) + "price";
            WorkshopView.Known known = find(text, price).number();
            if (!WorkshopSplice.says(text, price) && known != null) {
                String with = WorkshopSplice.number(
                        text,
                        price,
                        new Uncertain(known.value(), known.low(), known.high(), "1", Basis.GUESS, known.source()));
                return WorkshopSplice.number(with, path, number);
            }
        }
        return WorkshopSplice.number(text, path, number);
    }

    private static String friction(String text, WorkshopStep step) {
        String[] pair = step.path().substring("friction.".length()).split(",", 2);
        return WorkshopSplice.friction(text, pair[0], pair[1], typed("1", step));
    }

    private static Uncertain typed(String unit, WorkshopStep step) {
        Basis basis;
        try {
            basis = Basis.valueOf(step.basis().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new BadRequestException("read \"" + step.basis() + "\", expected measured, published or guess");
        }
        return WorkshopSplice.typed(plain(unit), words(step), step.low(), step.high(), basis, step.source());
    }

    /** Money and counts are bare numbers in the file. */
    private static String plain(String unit) {
        return unit.matches("mm|deg|N|g|mm/s|%|min|h|g/m²|g/cm³") ? unit : "1";
    }

    private static String words(WorkshopStep step) {
        if (!step.value().isString()) {
            throw new BadRequestException("read " + step.value() + ", expected it as it was typed");
        }
        return step.value().asString();
    }

    private static String words(double number) {
        return DesignEdit.words(number);
    }

    private static String remove(String text, String path) {
        for (WorkshopView.Section section : WorkshopViewMaker.of(text)) {
            for (WorkshopView.Group group : section.groups()) {
                if (group.path().equals(path)) {
                    return WorkshopSplice.remove(text, path);
                }
                for (WorkshopView.Value value : group.values()) {
                    if (value.path().equals(path) && value.mayGo()) {
                        return WorkshopSplice.remove(text, realPath(text, path));
                    }
                }
            }
        }
        throw new BadRequestException("\"" + path + "\" cannot be taken out alone; change it instead");
    }

    /** Friction stands in a list; here it goes by its pair. */
    private static String realPath(String text, String path) {
        if (!path.startsWith("friction.")) {
            return path;
        }
        List<String> pair = List.of(path.substring("friction.".length()).split(",", 2));
        List<WorkshopFile.FrictionEntry> entries = WorkshopReader.parse(text).friction();
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).between().equals(pair)) {
                return "friction." + i;
            }
        }
        return path;
    }

    private static WorkshopView.Value find(String text, String path) {
        return WorkshopViewMaker.of(text).stream()
                .flatMap(section -> section.groups().stream())
                .flatMap(group -> group.values().stream())
                .filter(value -> value.path().equals(path))
                .findFirst()
                .orElseThrow(() -> new BadRequestException("there is no value \"" + path + "\" in workshop.yaml"));
    }
}
