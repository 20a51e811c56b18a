package jackwork.app;

import java.util.List;

/** Coins to drop into a design's slot. */
record Tray(List<TrayCoin> coins) implements Payload {

    /** @param taken whether the design should take it */
    record TrayCoin(
            String code,
            String currency,
            String denomination,
            @Places(3) double diameter,
            boolean taken) {}
}
