package jackwork.design;

import java.util.List;

/**
 * @param between two parts; the first one's turning against the second is limited
 * @param pin the pin they share
 * @param from least angle from the drawn position, degrees, counter-clockwise positive
 * @param to greatest angle, degrees
 */
@About("Limits how far one part turns against another about a pin they share.")
public record StopEntry(
        List<String> between,
        String pin,
        @Unit("deg") double from,
        @Unit("deg") double to) {}
