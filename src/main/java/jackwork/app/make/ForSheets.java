package jackwork.app.make;

import jackwork.app.wire.Payload;

/**
 * Asks for sheets to be laid out.
 *
 * @param seconds to look for tighter ones; 0 for the usual
 */
record ForSheets(ForMaking making, double seconds) implements Payload {}
