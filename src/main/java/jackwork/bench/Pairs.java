package jackwork.bench;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Several values in one field: {@code lands=2;thrown=1}. */
final class Pairs {

    private Pairs() {}

    static String counts(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + entry.getValue())
                .collect(Collectors.joining(";"));
    }

    static String readings(List<Reading> readings) {
        return readings.stream()
                .map(reading -> reading.name() + "=" + plain(reading.value()))
                .collect(Collectors.joining(";"));
    }

    /** The shortest decimal that reads as the same number. */
    static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** @throws IllegalArgumentException when it is none */
    static double number(String text) {
        if (!text.strip().matches("-?\\d{1,15}(\\.\\d{1,18})?")) {
            throw new IllegalArgumentException("read \"" + text + "\", expected a number with a point, as in 17.5");
        }
        return Double.parseDouble(text.strip());
    }

    /** @throws IllegalArgumentException when it is none */
    static int integer(String text) {
        if (!text.strip().matches("-?\\d{1,9}")) {
            throw new IllegalArgumentException("read \"" + text + "\", expected a whole number");
        }
        return Integer.parseInt(text.strip());
    }

    static Map<String, Integer> counts(String text) {
        Map<String, Integer> counts = new TreeMap<>();
        for (String[] pair : pairs(text)) {
            if (counts.put(pair[0], integer(pair[1])) != null) {
                throw new IllegalArgumentException("read \"" + pair[0] + "\" twice, expected each once");
            }
        }
        return counts;
    }

    static List<Reading> readings(String text) {
        List<Reading> readings = new ArrayList<>();
        for (String[] pair : pairs(text)) {
            readings.add(new Reading(pair[0], number(pair[1])));
        }
        return readings;
    }

    private static List<String[]> pairs(String text) {
        List<String[]> pairs = new ArrayList<>();
        if (text.isBlank()) {
            return pairs;
        }
        for (String part : text.split(";", -1)) {
            String[] pair = part.strip().split("=", -1);
            if (pair.length != 2 || pair[0].isBlank()) {
                throw new IllegalArgumentException("read \"" + part + "\", expected NAME=NUMBER;NAME=NUMBER");
            }
            pairs.add(pair);
        }
        return pairs;
    }
}
