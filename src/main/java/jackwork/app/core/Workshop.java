package jackwork.app.core;

import jackwork.app.wire.Payload;
import java.util.List;

/** A workshop as the page lists it. */
public record Workshop(String name, List<DesignName> designs) implements Payload {

    public record DesignName(String id, String name) {}
}
