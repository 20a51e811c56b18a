package jackwork.app.core;

import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import java.util.List;

/**
 * A design as it would be with a change that is not saved: what can be told at once.
 *
 * @param scene with those parts alone whose outlines differ from the saved ones
 * @param findings as numbered, without spread
 */
record Glimpse(Scene scene, Report.Motion motion, List<Report.Finding> findings) implements Payload {}
