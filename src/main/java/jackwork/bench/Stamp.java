package jackwork.bench;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/**
 * What every entry of the log has.
 *
 * @param key made up by whoever logs it: the same key again is the same entry, not a second one
 * @param at when it happened; whole seconds
 */
public record Stamp(String key, Instant at, String note) {

    public Stamp {
        Texts.require("key", key, 1, 80);
        Texts.require("note", note, 0, 2000);
        at = at.truncatedTo(ChronoUnit.SECONDS);
        Texts.requireYear(at);
    }

    /** @throws IllegalArgumentException when nobody who logs it can have been there */
    void requireSensible() {
        Texts.requireSensible(at);
    }

    /** With a key that no other entry has. */
    public static Stamp of(Instant at, String note) {
        return new Stamp(UUID.randomUUID().toString(), at, note);
    }
}
