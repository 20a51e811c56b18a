package jackwork.app;

import org.jspecify.annotations.Nullable;

/**
 * A design as the page shows it.
 *
 * @param version of its files: an edit is decided on one
 * @param undo what taking back would take back, null when there is nothing
 * @param redo what would be made again
 */
record DesignView(
        String id,
        String version,
        Scene scene,
        Report report,
        Changeable changeable,
        @Nullable String undo,
        @Nullable String redo)
        implements Payload {}
