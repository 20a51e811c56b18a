package jackwork.app.pay;

import jackwork.app.wire.Payload;

/** Asks for findings run again for quicker ways of making, of what is laid out so. */
record ForAgain(String version, int laidOut) implements Payload {}
