package jackwork.app.core;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A design as the page shows it.
 *
 * @param version of its files: an edit is decided on one
 * @param mendable findings that do not pass and for which a better number can be looked for
 * @param undo what taking back would take back, null when there is nothing
 * @param redo what would be made again
 * @param putAside why what was kept for taking back is used no longer, and where it is; null when all is well
 */
public record DesignView(
        String id,
        String version,
        Scene scene,
        Report report,
        Changeable changeable,
        List<String> mendable,
        @Nullable String undo,
        @Nullable String redo,
        @Nullable String putAside)
        implements Payload {}
