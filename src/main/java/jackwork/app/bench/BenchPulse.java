package jackwork.app.bench;

import jackwork.app.wire.Payload;

/**
 * What the page asks every other second.
 *
 * @param state of the log: another word once anything was written
 */
record BenchPulse(String state, PhoneView phone) implements Payload {}
