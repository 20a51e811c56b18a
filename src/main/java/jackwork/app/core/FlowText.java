package jackwork.app.core;

import jackwork.app.wire.BadRequestException;
import jackwork.design.YamlWords;
import jackwork.geometry.Point;
import java.math.BigDecimal;
import java.util.Iterator;
import java.util.Map;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/**
 * A value that was sent, as a file of the workshop writes it on one line. What is sent is typed: a number, words, yes
 * or no, a place (two numbers), a list, or named fields; so no words can become fields, whatever letters are in them.
 */
public final class FlowText {

    /** Words that YAML takes for nothing but words. */
    private static final Pattern PLAIN = Pattern.compile("\\p{L}[\\p{L}\\p{N}._-]*( [\\p{L}\\p{N}._-]+)*");

    private static final Pattern NO_WORDS = Pattern.compile("(?i)true|false|null|yes|no|on|off|y|n");
    /** A number as makers type it: {@code 12}, {@code 0.5 in}, {@code 1/8 in}, {@code 38 %}. */
    private static final Pattern TYPED =
            Pattern.compile("[+-]?[0-9]+([.][0-9]+)?(/[0-9]+)?(" + " ?(mm|cm|in|deg|°|N|g|kg|s|min|h|%))?");

    private static final Pattern FIELD = Pattern.compile("[a-z][a-z0-9-]{0,39}");

    private static final double GREATEST = 1e9;

    private final Function<Point, String> places;

    private FlowText(Function<Point, String> places) {
        this.places = places;
    }

    /**
     * The text of a value.
     *
     * @param places how a place is written: those of the page are in another frame than those of the file
     * @throws BadRequestException when it is nothing that a file may say
     */
    public static String of(JsonNode value, Function<Point, String> places) {
        return new FlowText(places).text(value);
    }

    /** The same where there are no places: two numbers are two numbers. */
    public static String of(JsonNode value) {
        return of(value, at -> "[" + number(at.x()) + ", " + number(at.y()) + "]");
    }

    private String text(JsonNode value) {
        if (value.isNumber()) {
            return number(value.asDouble());
        } else if (value.isString()) {
            return words(value.asString());
        } else if (value.isBoolean()) {
            return String.valueOf(value.asBoolean());
        } else if (value.isArray()) {
            return isPlace(value) ? places.apply(point(value)) : list(value);
        } else if (value.isObject()) {
            return fields(value);
        }
        throw new BadRequestException("read \"" + value + "\", expected a number, words, a list or named fields");
    }

    private static Point point(JsonNode value) {
        return new Point(checked(value.get(0).asDouble()), checked(value.get(1).asDouble()));
    }

    private static boolean isPlace(JsonNode value) {
        return value.size() == 2 && value.get(0).isNumber() && value.get(1).isNumber();
    }

    private String list(JsonNode value) {
        StringJoiner list = new StringJoiner(", ", "[", "]");
        value.forEach(item -> list.add(text(item)));
        return list.toString();
    }

    private String fields(JsonNode value) {
        StringJoiner fields = new StringJoiner(", ", "{", "}");
        for (Iterator<Map.Entry<String, JsonNode>> each = value.properties().iterator(); each.hasNext(); ) {
            Map.Entry<String, JsonNode> field = each.next();
            if (!FIELD.matcher(field.getKey()).matches()) {
                throw new BadRequestException("read a field \"" + field.getKey()
                        + "\", expected small letters, digits and hyphens: side-gap");
            }
            fields.add(field.getKey() + ": " + text(field.getValue()));
        }
        return fields.toString();
    }

    /** Bare where YAML reads them as they stand, else in quotation marks. */
    static String words(String words) {
        boolean plain =
                PLAIN.matcher(words).matches() && !NO_WORDS.matcher(words).matches();
        if (plain || TYPED.matcher(words).matches()) {
            return words;
        }
        if (words.codePoints()
                .anyMatch(letter -> letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE)) {
            throw new BadRequestException(
                    "read half a letter in" + " \"" + words.replaceAll("\\p{Cs}", "?") + "\"; write it again");
        }
        return YamlWords.quoted(words);
    }

    private static double checked(double number) {
        if (!(Math.abs(number) <= GREATEST)) {
            throw new BadRequestException("read " + number + ", expected a number of at most 1000000000");
        }
        return number;
    }

    private static String number(double value) {
        String plain = BigDecimal.valueOf(checked(value)).toPlainString();
        return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
    }
}
