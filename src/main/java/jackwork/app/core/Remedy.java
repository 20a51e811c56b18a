package jackwork.app.core;

import jackwork.app.wire.Payload;
import jackwork.check.Sentence;
import java.util.List;

/**
 * A number that settles a finding.
 *
 * @param words what it does, or why none was found
 * @param steps to apply; empty when none was found
 */
record Remedy(String finding, Sentence words, List<Edit.Step> steps) implements Payload {}
