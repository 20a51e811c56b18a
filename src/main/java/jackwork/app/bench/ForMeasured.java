package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.Map;

/** Something measured, to be looked at before it is kept; the fields are those that log it. */
record ForMeasured(String kind, Map<String, String> fields) implements Payload {}
