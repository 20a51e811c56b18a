package jackwork.app.work;

import jackwork.app.wire.Payload;
import java.util.List;

/** Asks for better numbers. */
public record ForTuning(List<Free> free, long seed) implements Payload {

    /** A number that may change, and its limits. */
    record Free(String path, double low, double high) {}
}
