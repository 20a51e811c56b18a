package jackwork.design;

import jackwork.stock.Uncertain;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a key of a file is: the one place that knows it.
 *
 * @param key as it is written
 * @param type that its value is read into
 * @param isInline whether its own words stand for it
 * @param about one sentence for the maker; empty where the record says it all
 * @param unit of a bare number; {@code 1} for a pure one and for what is no number
 * @param quantity what a number may be; empty for what is no number, and where another table says it
 * @param names what it is the name of; empty for free text and for what is no word
 * @param choices the only words that may stand there; empty when others may
 */
record Word(
        RecordComponent component,
        String key,
        Type type,
        boolean isInline,
        boolean optional,
        String about,
        String unit,
        Optional<Quantity> quantity,
        Optional<Names> names,
        List<String> choices) {

    static Word of(RecordComponent component) {
        Quantity quantity = component.getAnnotation(Quantity.class);
        Unit unit = component.getAnnotation(Unit.class);
        About about = component.getAnnotation(About.class);
        OneOf choices = component.getAnnotation(OneOf.class);
        return new Word(
                component,
                keyOf(component),
                component.getGenericType(),
                component.isAnnotationPresent(Inline.class),
                component.getAnnotatedType().isAnnotationPresent(Nullable.class)
                        || component.getType() == List.class
                        || component.getType() == Map.class,
                about == null ? "" : about.value(),
                quantity != null ? quantity.unit() : unit == null ? "1" : unit.value(),
                Optional.ofNullable(quantity),
                Optional.ofNullable(component.getAnnotation(Names.class)),
                choices == null ? List.of() : List.of(choices.value()));
    }

    /** The component's name in hyphened words, unless {@link Key} says otherwise. */
    private static String keyOf(RecordComponent component) {
        Key key = component.getAnnotation(Key.class);
        return key != null
                ? key.value()
                : component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(java.util.Locale.ROOT);
    }

    /** The section of a kind of joint, where this word stands for all of them. */
    Word section(JointKind<?> kind) {
        return new Word(
                component,
                kind.section(),
                new MapOf(kind.entry()),
                false,
                true,
                "Each a " + kind.label() + ", by name.",
                unit,
                quantity,
                names,
                choices);
    }

    /** A map from names to values of one type. */
    private record MapOf(Class<?> values) implements ParameterizedType {

        @Override
        public Type[] getActualTypeArguments() {
            return new Type[] {String.class, values};
        }

        @Override
        public Type getRawType() {
            return Map.class;
        }

        @Override
        public @Nullable Type getOwnerType() {
            return null;
        }
    }

    /** Whether it is free text. */
    boolean isText() {
        return component.isAnnotationPresent(Text.class);
    }

    /** Whether it may say nothing. */
    boolean mayBeBlank() {
        Text text = component.getAnnotation(Text.class);
        return text != null && text.blank();
    }

    /** Whether the circle with the entry's own name serves where nothing is written. */
    boolean isOwnCircle() {
        return component.isAnnotationPresent(OwnCircle.class);
    }

    boolean isMap() {
        return component.getType() == Map.class;
    }

    boolean isList() {
        return component.getType() == List.class;
    }

    /** Whether only whole numbers go. */
    boolean isWhole() {
        return leaf() == int.class || leaf() == Integer.class;
    }

    boolean isNumber() {
        return isWhole() || leaf() == double.class || leaf() == Double.class || leaf() == Uncertain.class;
    }

    /** What stands innermost: a list's or a map's elements, or the value itself. */
    Class<?> leaf() {
        Type inner = type;
        while (inner instanceof ParameterizedType generic) {
            Type[] arguments = generic.getActualTypeArguments();
            inner = arguments[arguments.length - 1];
        }
        return (Class<?>) inner;
    }

    /** Its value in a record that was read. */
    @Nullable
    Object in(Record record) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(String.valueOf(component), e);
        }
    }
}
