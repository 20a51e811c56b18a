package jackwork.app;

import java.io.IOException;
import java.lang.reflect.AnnotatedArrayType;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The page's types, from the records that are sent to it and read from it ({@link Payload}). Run {@link #main} after a
 * record has changed; a test fails while the two differ.
 */
final class ApiTypes {

    static final Path FILE = Path.of("web", "src", "api-types.ts");
    private static final Path CLASSES = Path.of("target", "classes", "jackwork", "app");

    private final Map<String, Class<?>> named = new LinkedHashMap<>();
    private final StringBuilder out = new StringBuilder();

    private ApiTypes() {}

    /** Writes the file anew. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, text());
    }

    static String text() throws IOException {
        ApiTypes types = new ApiTypes();
        types.out.append("// Made from the records of jackwork.app by ApiTypes; change those, then run it again.\n");
        types.out.append("// Lengths in mm with y up, forces in N, angles in degrees.\n");
        for (Class<?> root : payloads()) {
            types.name(root);
        }
        return types.out.toString();
    }

    private static List<Class<?>> payloads() throws IOException {
        try (Stream<Path> files = Files.list(CLASSES)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".class"))
                    .sorted()
                    .<Class<?>>map(name -> load("jackwork.app." + name.substring(0, name.length() - 6)))
                    .filter(type -> type.isRecord() && Payload.class.isAssignableFrom(type))
                    .toList();
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The name of a record or enum; it is written before whatever uses it. */
    private String name(Class<?> type) {
        String name = type.getSimpleName();
        Class<?> known = named.putIfAbsent(name, type);
        if (known == null) {
            out.append(type.isEnum() ? words(type) : type.isAnnotationPresent(Tuple.class) ? tuple(type) : shape(type));
        } else if (known != type) {
            throw new IllegalStateException(known + " and " + type + " would have the same name on the page");
        }
        return name;
    }

    private static String words(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> "\"" + Json.word((Enum<?>) constant) + "\"")
                .collect(Collectors.joining(" | ", "\nexport type " + type.getSimpleName() + " = ", ";\n"));
    }

    private String tuple(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(component -> type(component.getAnnotatedType()))
                .collect(Collectors.joining(", ", "\nexport type " + type.getSimpleName() + " = [", "];\n"));
    }

    private String shape(Class<?> type) {
        StringBuilder shape = new StringBuilder("\nexport interface " + type.getSimpleName() + " {\n");
        for (RecordComponent component : type.getRecordComponents()) {
            shape.append("  ")
                    .append(component.getName())
                    .append(": ")
                    .append(type(component.getAnnotatedType()))
                    .append(";\n");
        }
        return shape.append("}\n").toString();
    }

    private String type(AnnotatedType annotated) {
        String plain = plain(annotated);
        return annotated.isAnnotationPresent(Nullable.class) ? plain + " | null" : plain;
    }

    private String plain(AnnotatedType annotated) {
        Type type = annotated.getType();
        if (annotated instanceof AnnotatedArrayType array) {
            return several(type(array.getAnnotatedGenericComponentType()));
        }
        if (type instanceof ParameterizedType generic && annotated instanceof AnnotatedParameterizedType inner) {
            AnnotatedType[] arguments = inner.getAnnotatedActualTypeArguments();
            return Collection.class.isAssignableFrom((Class<?>) generic.getRawType())
                    ? several(type(arguments[0]))
                    : "Record<string, " + type(arguments[1]) + ">";
        }
        Class<?> plain = (Class<?>) type;
        if (plain == String.class) {
            return "string";
        } else if (plain == boolean.class || plain == Boolean.class) {
            return "boolean";
        } else if (plain.isPrimitive() || Number.class.isAssignableFrom(plain)) {
            return "number";
        }
        return name(plain);
    }

    private static String several(String type) {
        return type.contains(" ") ? "(" + type + ")[]" : type + "[]";
    }
}
