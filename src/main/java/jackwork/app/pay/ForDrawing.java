package jackwork.app.pay;

import jackwork.app.wire.Payload;

/** Asks for virtual builds that say how many pieces pass, of what is laid out so. */
record ForDrawing(String version, int laidOut, int builds, long seed) implements Payload {}
