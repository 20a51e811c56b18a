package jackwork.app.bench;

import jackwork.app.wire.Payload;
import java.util.List;

/**
 * What measured values would change in workshop.yaml.
 *
 * @param text a name for its new text, by which it is written
 * @param skipped what could not be used, with why
 * @param designs that the workshop has: what it does to each is asked one by one ({@link UseEffect})
 */
record UseView(
        String text,
        List<UsedValue> values,
        List<SkippedValue> skipped,
        List<ChangedValue> changes,
        List<String> designs)
        implements Payload {

    record UsedValue(String name, BenchView.ValueView value) {}

    record SkippedValue(String name, String why) {}

    /** @param before empty where nothing stood */
    record ChangedValue(String path, String before, String after) {}
}
