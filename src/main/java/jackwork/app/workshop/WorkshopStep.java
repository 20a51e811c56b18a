package jackwork.app.workshop;

import jackwork.app.wire.Payload;
import tools.jackson.databind.JsonNode;

/**
 * A change of {@code workshop.yaml} that somebody at the page wants.
 *
 * @param base version of the file that it was decided on
 * @param label what it is, in a few words: for taking it back
 * @param path of the value; friction of two materials as {@code friction.coin,wood}
 * @param value words as typed; for {@link Doing#ADD} a number, words, a list or named fields; empty for
 *     {@link Doing#REMOVE}
 * @param low end of a number's interval, as typed; empty for other values
 * @param high likewise
 * @param basis {@code measured}, {@code published} or {@code guess}; empty for other values
 * @param source where a number comes from
 */
record WorkshopStep(
        String base,
        String label,
        Doing kind,
        String path,
        JsonNode value,
        String low,
        String high,
        String basis,
        String source)
        implements Payload {

    enum Doing {
        /** A value that the page shows. */
        SET,
        /** A new sheet, channel, price band and the like. */
        ADD,
        /** A value or entry that the workshop can be without. */
        REMOVE
    }
}
