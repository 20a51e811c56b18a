package jackwork.app;

/** A design as the page shows it. */
record DesignView(String id, Scene scene, Report report) implements Payload {}
