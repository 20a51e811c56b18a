package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.List;

/**
 * What measured values do to one design.
 *
 * @param trouble why it could not be checked; then there is nothing else
 */
record UseEffect(String design, String then, String now, List<MovedFinding> moved, String trouble) implements Payload {}
