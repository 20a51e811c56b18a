package jackwork.app.work;

import jackwork.app.wire.Payload;

/** Asks for virtual builds. */
public record ForPieces(int builds, long seed) implements Payload {}
