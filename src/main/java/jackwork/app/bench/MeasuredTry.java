package jackwork.app.bench;

import jackwork.app.wire.Payload;
import org.jspecify.annotations.Nullable;

/**
 * What a measurement comes to, before it is kept.
 *
 * @param place in workshop.yaml
 * @param alone of these readings; null when they are too few, then {@code why}
 * @param together with those of the same thing that are logged
 */
record MeasuredTry(
        String place,
        BenchView.@Nullable ValueView alone,
        String why,
        BenchView.@Nullable ValueView together,
        int measurements)
        implements Payload {}
