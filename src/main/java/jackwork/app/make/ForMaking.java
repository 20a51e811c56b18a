package jackwork.app.make;

import jackwork.app.wire.Payload;
import java.util.Map;

/**
 * What is to be made.
 *
 * @param quantity pieces
 * @param paper in the printer; empty for the workshop's
 * @param measured thickness of the sheets in hand, mm, by the workshop's names; what is not there is as the workshop has it
 */
record ForMaking(int quantity, String paper, Map<String, Double> measured) implements Payload {}
