package jackwork.price;

import java.util.List;
import java.util.Locale;

/** Where on its way a piece is. What is spoiled at one stage takes along what went into it before. */
public enum Stage {
    CUT,
    PRINT,
    DRESS,
    BUILD,
    TRY,
    PACK;

    static Stage of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** As written in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** This stage and those that follow it; printed parts join at the bench, so that cutting spoils none of them. */
    List<Stage> onward() {
        return switch (this) {
            case CUT -> List.of(CUT, DRESS, BUILD, TRY, PACK);
            case PRINT -> List.of(PRINT, BUILD, TRY, PACK);
            case DRESS -> List.of(DRESS, BUILD, TRY, PACK);
            case BUILD -> List.of(BUILD, TRY, PACK);
            case TRY -> List.of(TRY, PACK);
            case PACK -> List.of(PACK);
        };
    }

    /** Where stock of a kind goes in. */
    static Stage ofStock(String kind) {
        return switch (kind) {
            case "sheet" -> CUT;
            case "filament" -> PRINT;
            case "paper", "paint", "cloth" -> DRESS;
            case "carton" -> PACK;
            default -> BUILD;
        };
    }
}
