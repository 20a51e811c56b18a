package jackwork.app;

/** What came in from a CSV file: entries that were new, and those that were there already. */
record TakenIn(int added, int already) implements Payload {}
