package jackwork.app;

/** The state of a design's files, to notice what was changed elsewhere. */
record VersionView(String version) implements Payload {}
