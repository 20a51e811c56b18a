package jackwork.app.bench;

import jackwork.app.wire.Payload;

/** A design to be frozen as it stands. */
record ForFreezing(String design, String note) implements Payload {}
