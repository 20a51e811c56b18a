package jackwork.parts;

import jackwork.design.WorkshopFile;
import jackwork.stock.FrictionPair;
import jackwork.stock.Frictions;

/** Friction as this workshop has it: its own measurements first, the catalogue for the rest. */
final class Friction {

    private Friction() {}

    static FrictionPair between(WorkshopFile workshop, String a, String b) {
        for (WorkshopFile.FrictionEntry entry : workshop.friction()) {
            if (entry.between().size() == 2
                    && entry.between().contains(a)
                    && entry.between().contains(b)
                    && (!a.equals(b)
                            || entry.between().get(0).equals(entry.between().get(1)))) {
                return new FrictionPair(a, b, entry.coefficient(), "");
            }
        }
        return Frictions.catalogue().between(a, b);
    }
}
