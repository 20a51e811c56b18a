package jackwork.app.workshop;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import org.jspecify.annotations.Nullable;

/**
 * A design's verdict as the workshop stands, and what it hangs on.
 *
 * @param verdict null when it cannot be checked
 * @param hangsOn likewise
 * @param trouble why it cannot be checked; empty when it can
 */
record VerdictView(
        String id, String name, Report.@Nullable Verdict verdict, Report.@Nullable Hangs hangsOn, String trouble)
        implements Payload {}
