package jackwork.app;

/** A design to be frozen as it stands. */
record ForFreezing(String design, String note) implements Payload {}
