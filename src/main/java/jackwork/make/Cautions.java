package jackwork.make;

import java.util.List;

/** The usual cautions, in our words; local codes and licensed practice come first. */
public final class Cautions {

    /** For whoever cuts and builds. */
    public static final List<String> FOR_THE_WORKSHOP = List.of(
            "Laser: never leave it cutting alone; keep its lid shut, its extraction on and a fire blanket at hand.",
            "Never laser PVC, vinyl or any plastic with chlorine or fluorine: the fumes poison people and machine.",
            "Blades, drills and glue: mind fingers and eyes, air the room. Wood dust and smoke are harmful.",
            "Local codes and licensed practice come before anything printed here.");

    /** On what goes with a piece. */
    public static final String FOR_THE_PIECE =
            "Contains small parts and coins; keep from children under three. Not assessed to any toy standard.";

    private Cautions() {}
}
