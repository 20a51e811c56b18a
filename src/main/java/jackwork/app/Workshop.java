package jackwork.app;

import java.util.List;

/** A workshop as the page lists it. */
record Workshop(String name, List<DesignName> designs) implements Payload {

    record DesignName(String id, String name) {}
}
