package jackwork;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The house: imports point only down, rooms on one floor never import each other, inside rooms as well. No exemptions. */
@Tag("quick")
class ArchitectureTest {

    private static final Map<String, Integer> FLOOR = Map.ofEntries(
            Map.entry("geometry", 0),
            Map.entry("stock", 0),
            Map.entry("chance", 0),
            Map.entry("drawing", 1),
            Map.entry("layout", 1),
            Map.entry("design", 2),
            Map.entry("parts", 3),
            Map.entry("motion", 4),
            Map.entry("check", 5),
            Map.entry("builds", 6),
            Map.entry("make", 6),
            Map.entry("price", 6),
            Map.entry("bench", 6),
            Map.entry("app", 7),
            Map.entry("cli", 8),
            Map.entry("web", 8));

    /** The floors inside a room that is large. */
    private static final Map<String, Map<String, Integer>> INSIDE = Map.of(
            "motion",
            Map.of("model", 0, "kind", 1, "rest", 1, "time", 1, "coin", 2),
            "app",
            Map.of(
                    "wire",
                    0,
                    "history",
                    1,
                    "core",
                    2,
                    "bring",
                    3,
                    "work",
                    3,
                    "make",
                    3,
                    "pay",
                    3,
                    "bench",
                    3,
                    "workshop",
                    3));

    /** Fewer than this and the import has missed something; raise it as the house grows. */
    private static final int LEAST_CLASSES = 400;

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("jackwork");

    private static Optional<String> room(JavaClass type) {
        String[] names = type.getPackageName().split("\\.");
        return names.length > 1 && names[0].equals("jackwork") ? Optional.of(names[1]) : Optional.empty();
    }

    /** The room inside a room. */
    private static Optional<String> inside(JavaClass type) {
        String[] names = type.getPackageName().split("\\.");
        return names.length > 2 ? Optional.of(names[2]) : Optional.empty();
    }

    /** Whether one class may know the other: of the same room, or of a lower floor. */
    private static boolean mayKnow(JavaClass from, JavaClass to) {
        String fromRoom = room(from).orElseThrow();
        String toRoom = room(to).orElseThrow();
        if (!fromRoom.equals(toRoom)) {
            return FLOOR.get(fromRoom) > FLOOR.get(toRoom);
        }
        Map<String, Integer> floors = INSIDE.get(fromRoom);
        return floors == null
                || inside(from).equals(inside(to))
                || floors.get(inside(from).orElseThrow())
                        > floors.get(inside(to).orElseThrow());
    }

    @Test
    void sawTheHouse() {
        assertThat(CLASSES.size()).isGreaterThan(LEAST_CLASSES);
    }

    @Test
    void everyClassIsInAKnownRoom() {
        assertThat(CLASSES)
                .allSatisfy(type -> assertThat(room(type).map(FLOOR::get))
                        .as(type.getName())
                        .isPresent());
        assertThat(CLASSES).allSatisfy(type -> {
            Map<String, Integer> floors = INSIDE.get(room(type).orElseThrow());
            boolean known = floors == null
                    ? inside(type).isEmpty()
                    : inside(type)
                            .map(floors::containsKey)
                            .orElse(type.getSimpleName().equals("package-info"));
            assertThat(known).as(type.getName()).isTrue();
        });
    }

    @Test
    void importsPointOnlyDown() {
        List<String> wrong = new ArrayList<>();
        for (JavaClass type : CLASSES) {
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                JavaClass target = dependency.getTargetClass().getBaseComponentType();
                if (!target.getPackageName().startsWith("jackwork")) {
                    continue;
                }
                if (!mayKnow(type, target)) {
                    wrong.add(dependency.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void librariesStayInTheirRooms() {
        List<String> wrong = new ArrayList<>();
        Map<String, String> home = Map.of(
                "org.sqlite",
                "bench",
                "java.sql",
                "bench",
                "com.google.zxing",
                "drawing",
                "picocli",
                "cli",
                "org.eclipse.jetty",
                "web",
                "org.locationtech.jts",
                "geometry",
                "org.apache.pdfbox",
                "drawing");
        for (JavaClass type : CLASSES) {
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                home.forEach((library, room) -> {
                    if (dependency.getTargetClass().getPackageName().startsWith(library)
                            && !room(type).orElseThrow().equals(room)) {
                        wrong.add(dependency.getDescription());
                    }
                });
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void everyRoomSaysWhatItIs() {
        List<String> all = new ArrayList<>(FLOOR.keySet());
        INSIDE.forEach((room, floors) -> floors.keySet().forEach(inner -> all.add(room + "/" + inner)));
        for (String room : all) {
            assertThat(Files.exists(Path.of("src/main/java/jackwork", room, "package-info.java")))
                    .as("package-info.java of " + room)
                    .isTrue();
        }
    }
}
