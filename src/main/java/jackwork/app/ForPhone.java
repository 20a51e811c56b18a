package jackwork.app;

/**
 * A phone to be let in.
 *
 * @param address of this machine; empty for the only one
 */
record ForPhone(String address) implements Payload {}
