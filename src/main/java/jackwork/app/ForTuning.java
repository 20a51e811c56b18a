package jackwork.app;

import java.util.List;

/** Asks for better numbers. */
record ForTuning(List<Free> free, long seed) implements Payload {

    /** A number that may change, and its limits. */
    record Free(String path, double low, double high) {}
}
