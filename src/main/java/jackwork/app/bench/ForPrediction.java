package jackwork.app.bench;

import jackwork.app.wire.Payload;

/** Virtual builds of a frozen design to be run. */
record ForPrediction(String design, int revision, int builds, long seed) implements Payload {}
