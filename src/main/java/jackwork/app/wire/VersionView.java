package jackwork.app.wire;

/** The state of a design's files, to notice what was changed elsewhere. */
public record VersionView(String version) implements Payload {}
