package jackwork.app.core;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.OldWorkshop;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Workshops of release 0.1 as makers may have written them, made ones of today's and taken back. */
class RenewedWorkshopsTest {

    private static final int CASES = 12;

    @TempDir
    private Path folder;

    private Path workshop;
    private Map<String, String> before;
    private Renewal renewal;

    private Path file(String name) {
        return workshop.resolve(name);
    }

    private void isAsBefore() throws IOException {
        assertThat(OldWorkshop.bytes(workshop)).isEqualTo(before);
    }

    /** Written by hand in every way that is read: what is not of the step stays, and all comes back byte for byte. */
    @Test
    @DisabledOnOs(OS.WINDOWS)
    void randomWorkshops() throws IOException {
        Random random = new Random(20261201);
        for (int i = 0; i < CASES; i++) {
            workshop = OldWorkshop.at(folder.resolve("hut-" + i));
            renewal = new Renewal(workshop);
            Map<String, List<String>> marks = new LinkedHashMap<>();
            int clearances = 0;
            for (String name : renewal.look().files()) {
                String old = Files.readString(file(name));
                if (name.startsWith("boxes/")) {
                    clearances += 1;
                }
                String varied = varied(old, random, marks.computeIfAbsent(name, key -> new ArrayList<>()));
                Files.write(file(name), varied.getBytes(StandardCharsets.UTF_8));
                if (random.nextInt(3) == 0) {
                    Files.setPosixFilePermissions(file(name), PosixFilePermissions.fromString("r--r--r--"));
                }
            }
            before = OldWorkshop.bytes(workshop);
            Map<String, Set<PosixFilePermission>> rights = rights();
            Renewal.Told told = renewal.renew();
            assertThat(told.files()).as("case " + i + " " + told.lost()).hasSize(18);
            assertThat(told.lost().stream().filter(line -> line.contains("bucket.clearance")))
                    .as("case " + i)
                    .hasSize(clearances);
            for (String name : told.files()) {
                String now = Files.readString(file(name));
                assertThat(marks.get(name)).as("case " + i + " " + name).allMatch(now::contains);
                assertThat(now.contains("\r\n"))
                        .isEqualTo(Files.readString(kept(name)).contains("\r\n"));
            }
            for (String id : DesignFolders.list(workshop)) {
                DesignReader.read(file(id));
            }
            assertThat(rights()).isEqualTo(rights);
            renewal.takeBack();
            isAsBefore();
            assertThat(rights()).isEqualTo(rights);
        }
    }

    private Path kept(String name) {
        return file(".jackwork/renewed/1/before").resolve(name);
    }

    private Map<String, Set<PosixFilePermission>> rights() throws IOException {
        Map<String, Set<PosixFilePermission>> rights = new LinkedHashMap<>();
        for (String name : before.keySet()) {
            rights.put(name, Files.getPosixFilePermissions(file(name)));
        }
        return rights;
    }

    /** @param marks comments that must stay */
    private static String varied(String text, Random random, List<String> marks) {
        String end = random.nextBoolean() ? "\n" : "\r\n";
        StringBuilder out = new StringBuilder(random.nextInt(4) == 0 ? "\uFEFF" : "");
        List<String> lines = new ArrayList<>(text.lines().toList());
        braced(lines, random);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            boolean empties = line.equals("change:") && lines.get(i + 1).contains("bucket.bearing");
            boolean goes = empties || line.matches(".*\\b(clearance|bearing)\\b.*");
            if (line.startsWith("format: 1")) {
                line = List.of("format: 1", "\"format\": 1", "format:    1", "format: '1'", "format : 01")
                        .get(random.nextInt(5));
            }
            if (!goes && !line.isBlank() && !line.contains("#") && random.nextInt(3) == 0) {
                marks.add("# mark " + marks.size() + "!");
                line += "  " + marks.get(marks.size() - 1);
            }
            if (!goes && line.matches("[a-z].*") && random.nextInt(3) == 0) {
                marks.add("# above " + marks.size() + "!");
                out.append(marks.get(marks.size() - 1)).append(end);
            }
            out.append(line).append(i < lines.size() - 1 || random.nextBoolean() ? end : "");
        }
        return out.toString();
    }

    /** The bucket in braces, on one line or on many. */
    private static void braced(List<String> lines, Random random) {
        int from = lines.indexOf("  bucket:");
        if (from < 0 || random.nextBoolean()) {
            return;
        }
        int to = from + 1;
        while (lines.get(to).startsWith("    ")) {
            to++;
        }
        List<String> entries = new ArrayList<>(lines.subList(from + 1, to).stream()
                .map(line -> line.replaceFirst(" +#.*$", ""))
                .toList());
        Collections.shuffle(entries, random);
        List<String> now = new ArrayList<>();
        if (random.nextBoolean()) {
            now.add("  bucket: {"
                    + String.join(", ", entries.stream().map(String::strip).toList()) + "}");
        } else {
            now.add("  bucket: {");
            for (int i = 0; i < entries.size(); i++) {
                now.add(entries.get(i) + (i < entries.size() - 1 ? "," : ""));
            }
            now.add("  }");
        }
        lines.subList(from, to).clear();
        lines.addAll(from, now);
    }
}
