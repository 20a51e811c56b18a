package jackwork.motion.kind;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Variation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The mechanisms of {@code src/test/cases}: for each kind of joint one that is as plain as can be, on the demo's box. */
final class JointCases {

    private static final Path CASES = Path.of("src/test/cases");

    private final Path folder;

    /** @param folder empty; the demo's workshop and the cases are copied into it */
    JointCases(Path folder) throws IOException {
        this.folder = DemoCopy.at(folder.resolve("workshop")).resolve("cases");
        for (String name : names()) {
            Path into = Files.createDirectories(this.folder.resolve(name));
            for (String file : List.of("figure.yaml", "figure.svg")) {
                Files.copy(CASES.resolve(name).resolve(file), into.resolve(file));
            }
            Files.writeString(into.resolve("design.yaml"), """
                    format: 2
                    name: %s
                    box: ../../boxes/marsh-box/box.yaml
                    figure: figure.yaml
                    coins: [EUR-1]
                    """.formatted(name));
        }
    }

    static List<String> names() {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.map(path -> path.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Mechanism mechanism(String name) {
        return MechanismCompiler.compile(assembly(name));
    }

    Assembly assembly(String name) {
        return Assembler.assemble(DesignReader.read(folder.resolve(name)));
    }

    /** Without friction, but of outlines on each other. */
    Assembly smooth(String name) {
        Assembly assembly = assembly(name);
        for (Variation variation : Variation.of(assembly)) {
            if (variation.name().startsWith("friction of ") && !variation.name().equals("friction of wood on wood")) {
                assembly = variation.with().apply(assembly, 0.0);
            }
        }
        return assembly;
    }
}
