package jackwork.app.work;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Places;
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
