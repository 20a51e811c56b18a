package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.List;

/**
 * Measured values to be put to use.
 *
 * @param wanted by their names
 * @param text the name of workshop.yaml's new text as it was looked at ({@link UseView})
 */
record ForUse(List<String> wanted, String text) implements Payload {}
