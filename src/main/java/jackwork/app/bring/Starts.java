package jackwork.app.bring;

import jackwork.app.wire.Payload;
import java.util.List;

/** What a new design can be begun from. */
record Starts(List<Start> starts) implements Payload {

    /**
     * @param id {@code own/heron}, {@code demo/heron}, {@code bare/nodding}
     * @param words what it shows, in a few words; empty for designs of the workshop
     */
    record Start(String id, String name, String words) {}

    /** A new design that is asked for. */
    record Begin(String from, String name, String box) implements Payload {}

    /** The id of a design that was made. */
    record Made(String id) implements Payload {}
}
