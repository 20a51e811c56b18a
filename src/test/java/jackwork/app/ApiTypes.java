package jackwork.app;

import jackwork.app.wire.Json;
import jackwork.app.wire.Payload;
import jackwork.app.wire.Report;
import jackwork.app.wire.Tuple;
import jackwork.check.Finding;
import jackwork.stock.Basis;
import java.io.IOException;
import java.lang.reflect.AnnotatedArrayType;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * The page's types, from the records that are sent to it and read from it ({@link Payload}). Run {@link #main} after a
 * record has changed; a test fails while the two differ.
 */
final class ApiTypes {

    static final Path FILE = Path.of("web", "src", "core", "api-types.ts");
    private static final Path CLASSES = classesOf(Payload.class);

    private final Map<String, Class<?>> named = new LinkedHashMap<>();
    private final StringBuilder out = new StringBuilder();

    private ApiTypes() {}

    /** Where the records that run now lie: a folder of classes built earlier may lack the newest. */
    private static Path classesOf(Class<?> wire) {
        try {
            return Path.of(wire.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .resolve(Path.of("jackwork", "app"));
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes the file anew. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(FILE, text());
    }

    static String text() throws IOException {
        ApiTypes types = new ApiTypes();
        types.out.append("// Made from the records of jackwork.app by ApiTypes; change those, then run it again.\n");
        types.out.append("// Lengths in mm with y up, forces in N, angles in degrees.\n");
        types.out.append("\n// What a change puts into a file: words as typed, two numbers are a place.\n");
        types.out.append(
                "export type FieldValue = string | number | boolean | FieldValue[] | { [field: string]: FieldValue };\n");
        for (Class<?> root : payloads()) {
            types.name(root);
        }
        return types.out.toString();
    }

    private static List<Class<?>> payloads() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.filter(file -> file.toString().endsWith(".class"))
                    .sorted(Comparator.comparing(file -> file.getFileName().toString()))
                    .<Class<?>>map(file -> load("jackwork.app."
                            + CLASSES.relativize(file)
                                    .toString()
                                    .replaceFirst("\\.class$", "")
                                    .replace(java.io.File.separatorChar, '.')))
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
        if (type == Finding.class) {
            return name(Report.Finding.class); // as Json writes it
        }
        String plain = type.getSimpleName();
        String name = taken(plain, type) ? room(type) + plain : plain;
        Class<?> known = named.putIfAbsent(name, type);
        if (known == null) {
            out.append(
                    type.isEnum()
                            ? words(type, name)
                            : type.isAnnotationPresent(Tuple.class) ? tuple(type) : shape(type, name));
        } else if (known != type) {
            throw new IllegalStateException(known + " and " + type + " would have the same name on the page");
        }
        return name;
    }

    /** Other rooms' records give way to our own of the same name: a price's stage is a PriceStage. */
    private boolean taken(String name, Class<?> type) {
        Class<?> known = named.get(name);
        return known != null
                && known != type
                && !type.getPackageName().equals(getClass().getPackageName());
    }

    private static String room(Class<?> type) {
        String room = type.getPackageName().replaceAll(".*\\.", "");
        return Character.toUpperCase(room.charAt(0)) + room.substring(1);
    }

    private static String words(Class<?> type, String name) {
        return Arrays.stream(type.getEnumConstants())
                .map(constant -> constant instanceof Basis basis ? basis.words() : Json.word((Enum<?>) constant))
                .map(word -> "\"" + word + "\"")
                .collect(Collectors.joining(" | ", "\nexport type " + name + " = ", ";\n"));
    }

    private String tuple(Class<?> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(component -> type(component.getAnnotatedType()))
                .collect(Collectors.joining(", ", "\nexport type " + type.getSimpleName() + " = [", "];\n"));
    }

    private String shape(Class<?> type, String name) {
        StringBuilder shape = new StringBuilder("\nexport interface " + name + " {\n");
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
        if (plain == String.class || plain == BigDecimal.class) {
            return "string";
        } else if (plain == boolean.class || plain == Boolean.class) {
            return "boolean";
        } else if (plain.isPrimitive() || Number.class.isAssignableFrom(plain)) {
            return "number";
        }
        return plain == JsonNode.class ? "FieldValue" : name(plain);
    }

    private static String several(String type) {
        return type.contains(" ") ? "(" + type + ")[]" : type + "[]";
    }
}
