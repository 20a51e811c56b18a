package jackwork.fuzz;

import jackwork.DemoCopy;
import jackwork.check.Questions;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The four YAML files of a design. The input's first line says which it stands for: {@code # figure of windmill}; a
 * {@code design} of the {@code heron} where it does not. It is read with the rest of the demo, put together, moved
 * through its stroke and asked every quick question.
 */
public final class YamlReading extends Reading {

    private static final YamlReading READING = new YamlReading();
    private static final Pattern FIRST =
            Pattern.compile("\\A# (design|box|figure|workshop)(?: of (heron|lamplighter|windmill|cobbler))?\\b");
    private static final Pattern NAMES = Pattern.compile("\\.yaml|\\.svg|\\.png|body|lever|stroke|layer|part");

    private final Path workshop = folder("yaml");
    private final Map<Path, byte[]> whole = new HashMap<>();

    private YamlReading() {
        try {
            DemoCopy.at(workshop);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    @Override
    protected void read(byte[] input) throws IOException {
        String head = new String(input, 0, Math.min(input.length, 64), StandardCharsets.ISO_8859_1);
        Matcher first = FIRST.matcher(head);
        boolean told = first.find();
        String role = told ? first.group(1) : "design";
        String name = told && first.group(2) != null ? first.group(2) : "heron";
        Path folder = workshop.resolve(name);
        Path file = file(role, folder);
        if (!whole.containsKey(file)) {
            whole.put(file, Files.readAllBytes(file));
        }
        Files.write(file, input);
        try {
            Map<Path, String> before = state(workshop);
            try {
                Design design = DesignReader.read(folder);
                Questions.askQuickly(Subject.asNumbered(design));
                if (role.equals("design")) {
                    DesignEdit.with(DesignReader.text(folder), "box.coin-works.slot.width", "3.1");
                }
            } finally {
                requireUntouched(before, workshop);
            }
        } finally {
            Files.write(file, whole.get(file));
        }
    }

    private Path file(String role, Path folder) {
        String box = folder.endsWith("cobbler") ? "boxes/reed-box/box.yaml" : "boxes/marsh-box/box.yaml";
        return switch (role) {
            case "box" -> workshop.resolve(box);
            case "workshop" -> workshop.resolve("workshop.yaml");
            default -> folder.resolve(role + ".yaml");
        };
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        return thrown instanceof DesignException
                        || thrown instanceof MechanismException
                        || thrown instanceof PartException
                        || thrown instanceof MakeException
                ? thrown.getMessage()
                : null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}
