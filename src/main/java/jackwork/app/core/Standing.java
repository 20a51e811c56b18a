package jackwork.app.core;

import jackwork.app.wire.Payload;
import org.jspecify.annotations.Nullable;

/**
 * How a design stands that cannot be shown as its files are.
 *
 * @param version of its files; empty where they cannot be told
 * @param problem what is wrong, and where; empty where it can be shown
 * @param undo what taking back would take back, null when there is nothing
 * @param last as it could be shown last, null when nobody looked at it since Jackwork was started
 */
record Standing(
        String version,
        String problem,
        @Nullable String undo,
        @Nullable DesignView last) implements Payload {}
