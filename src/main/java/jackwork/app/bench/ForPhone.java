package jackwork.app.bench;

import jackwork.app.wire.Payload;

/**
 * A phone to be let in.
 *
 * @param address of this machine; empty for the only one
 */
record ForPhone(String address) implements Payload {}
