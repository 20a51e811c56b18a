package jackwork.app;

import java.util.List;

/** A workshop as the page lists it. */
record Workshop(String name, List<Entry> designs) implements Payload {

    record Entry(String id, String name) {}
}
