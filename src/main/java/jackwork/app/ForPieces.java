package jackwork.app;

/** Asks for virtual builds. */
record ForPieces(int builds, long seed) implements Payload {}
