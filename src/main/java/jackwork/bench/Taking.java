package jackwork.bench;

import java.util.Locale;

/**
 * An emptying of a piece's cash box.
 *
 * @param countedBy one who counted
 * @param witnessedBy the other
 * @param seal number of the seal that was broken for it
 */
public record Taking(Stamp stamp, String serial, Money money, String countedBy, String witnessedBy, String seal)
        implements Stamped {

    public Taking {
        Texts.require("serial", serial, 1, 40);
        Texts.require("counted-by", countedBy, 1, 80);
        Texts.require("witnessed-by", witnessedBy, 1, 80);
        Texts.require("seal", seal, 1, 40);
        if (plain(countedBy).equals(plain(witnessedBy))) {
            throw new IllegalArgumentException(
                    "counted by and witnessed by are both \"" + countedBy.strip() + "\", expected two people");
        }
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
