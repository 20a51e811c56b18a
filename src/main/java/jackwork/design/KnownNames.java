package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.stock.Coins;
import jackwork.stock.Fasteners;
import jackwork.stock.Operations;
import jackwork.stock.Rods;
import jackwork.stock.Sheets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which names there are, of each kind, for the words of one file. */
final class KnownNames {

    private final Map<NameKind, Collection<String>> own = new EnumMap<>(NameKind.class);
    private final Map<NameKind, Collection<String>> ofBox = new EnumMap<>(NameKind.class);

    private KnownNames() {
        own.put(NameKind.SHEET_KIND, Sheets.catalogue().names());
        own.put(NameKind.ROD_KIND, Rods.catalogue().names());
        own.put(NameKind.FASTENER, Fasteners.catalogue().names());
        own.put(NameKind.COIN, Coins.catalogue().names());
        own.put(NameKind.OPERATION, Operations.catalogue().names());
    }

    static KnownNames ofWorkshop() {
        return new KnownNames();
    }

    static KnownNames ofBox(WorkshopFile workshop, BoxFile box, Drawing drawing) {
        KnownNames names = new KnownNames();
        names.addStock(workshop);
        names.own.put(NameKind.OUTLINE, drawing.outlines().keySet());
        addWorks(names.own, box.works());
        return names;
    }

    static KnownNames ofFigure(WorkshopFile workshop, BoxFile box, FigureFile figure, Drawing drawing) {
        KnownNames names = new KnownNames();
        names.addStock(workshop);
        names.own.put(NameKind.OUTLINE, drawing.outlines().keySet());
        addWorks(names.own, figure.works());
        addWorks(names.ofBox, box.works());
        return names;
    }

    private void addStock(WorkshopFile workshop) {
        own.put(NameKind.SHEET, workshop.sheets().keySet());
        own.put(NameKind.ROD, workshop.rods().keySet());
        own.put(NameKind.CORD, workshop.cords().keySet());
    }

    private static void addWorks(Map<NameKind, Collection<String>> to, Works works) {
        to.put(NameKind.PART, works.parts().keySet());
        to.put(NameKind.PIN, works.pins().keySet());
        to.put(NameKind.GEAR, works.gears().keySet());
        to.put(NameKind.MOUNT, works.mounts().keySet());
    }

    /** Every word of a file that is a name must be one that there is. */
    void check(Record file, YamlFile yaml) {
        Walk.over(file, "", new Walk.Visitor() {
            @Override
            public void value(String path, String entry, Word word, @Nullable Object value) {
                if (value instanceof String name && !word.isMap()) {
                    word.names().ifPresent(names -> hold(path, name, names, yaml));
                }
            }

            @Override
            public void key(String path, Word word, String name) {
                if (word.isMap()) {
                    word.names().ifPresent(names -> hold(path, name, names, yaml));
                }
            }
        });
    }

    private void hold(String path, String name, Names names, YamlFile yaml) {
        boolean ground = names.orGround() && name.equals(References.GROUND);
        if (!ground && names.value() != NameKind.GOODS) {
            References.known(path, name, of(names), words(names), yaml);
        }
    }

    private Collection<String> of(Names names) {
        Collection<String> mine = own.getOrDefault(names.value(), List.of());
        // In a box's own file what it has is the box's.
        Collection<String> theBoxes = ofBox.isEmpty() ? mine : ofBox.getOrDefault(names.value(), List.of());
        return switch (names.whose()) {
            case OWN -> mine;
            case BOX -> theBoxes;
            case ANY -> both(mine, theBoxes);
        };
    }

    private static Collection<String> both(Collection<String> mine, Collection<String> theBoxes) {
        if (mine == theBoxes || theBoxes.isEmpty()) {
            return mine;
        }
        List<String> both = new ArrayList<>(theBoxes);
        both.addAll(mine);
        return both;
    }

    private static String words(Names names) {
        return names.value().words()
                + switch (names.whose()) {
                    case OWN -> " of this file";
                    case BOX -> " of the box";
                    case ANY -> "";
                };
    }
}
