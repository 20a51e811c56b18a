package jackwork.app.core;

import jackwork.app.wire.Payload;

/** What came in from a CSV file: entries that were new, and those that were there already. */
public record TakenIn(int added, int already) implements Payload {}
