package jackwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Disabled;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;

/** {@code docs/faults.md} names no test that is not there. */
@Tag("quick")
class FaultsTest {

    private static final Path TABLE = Path.of("docs/faults.md");
    private static final Path TESTS = Path.of("src/test/java");
    private static final Pattern NAMED = Pattern.compile("`(\\w+Test)#(\\w+)`");
    private static final List<Class<? extends Annotation>> RUN =
            List.of(Test.class, ParameterizedTest.class, TestFactory.class);

    @Test
    void everyPromiseNamesATestThatRuns() throws IOException {
        Map<String, Class<?>> classes = classes();
        List<String> missing = new ArrayList<>();
        int promises = 0;
        for (String line : Files.readAllLines(TABLE)) {
            boolean promise = line.startsWith("| ") && !line.contains("| shown by");
            Matcher named = NAMED.matcher(line);
            boolean found = false;
            while (named.find()) {
                found = true;
                if (!runs(classes.get(named.group(1)), named.group(2))) {
                    missing.add(named.group());
                }
            }
            if (promise) {
                promises++;
                assertThat(found).as(line).isTrue();
            }
        }
        assertThat(missing).isEmpty();
        assertThat(promises).isGreaterThan(25);
    }

    private static boolean runs(Class<?> type, String name) {
        return type != null
                && Stream.of(type.getDeclaredMethods())
                        .anyMatch(method -> method.getName().equals(name)
                                && RUN.stream().anyMatch(method::isAnnotationPresent)
                                && !isDisabled(type, method));
    }

    private static boolean isDisabled(Class<?> type, Method method) {
        return type.isAnnotationPresent(Disabled.class) || method.isAnnotationPresent(Disabled.class);
    }

    private static Map<String, Class<?>> classes() throws IOException {
        Map<String, Class<?>> classes = new HashMap<>();
        try (Stream<Path> files = Files.walk(TESTS)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith("Test.java")).toList()) {
                String name =
                        TESTS.relativize(file).toString().replace(".java", "").replaceAll("[/\\\\]", ".");
                try {
                    classes.put(
                            name.substring(name.lastIndexOf('.') + 1),
                            Class.forName(name, false, FaultsTest.class.getClassLoader()));
                } catch (ClassNotFoundException e) {
                    throw new AssertionError(file + " is not compiled", e);
                }
            }
        }
        return classes;
    }
}
