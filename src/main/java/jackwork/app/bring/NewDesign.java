package jackwork.app.bring;

import jackwork.app.core.Aside;
import jackwork.app.wire.UnknownDesignException;
import jackwork.design.Design;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.WholeFile;
import jackwork.design.WorkshopReader;
import jackwork.design.YamlEdit;
import jackwork.design.YamlWords;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Starts a design from an example: the example's folder under another name, its box beside it. The folder is made aside
 * and appears whole or not at all.
 */
final class NewDesign {

    /** Of the demo: what bare boards stand on in a workshop that has no box. */
    private static final String BOX = "boxes/marsh-box";

    private NewDesign() {}

    /** A new design whose folder has its name, from a design of the demo or from bare boards. */
    static Path make(Path demo, Path workshop, String name, String example) throws IOException {
        BareStarts.Bare bare = BareStarts.find(example).orElse(null);
        return bare == null
                ? make(demo, workshop, name, name, example, folder -> {})
                : boards(demo, workshop, name, bare);
    }

    /** On the workshop's first box, or on the demo's where it has none. */
    private static Path boards(Path demo, Path workshop, String name, BareStarts.Bare bare) throws IOException {
        begin(demo, workshop);
        BringMaker maker = new BringMaker(workshop.toAbsolutePath().normalize());
        if (maker.boxes().isEmpty()) {
            Path box = Path.of(BOX);
            Aside.copy(demo.resolve(box), workshop.resolve(box));
        }
        String box = maker.boxes().get(0).id();
        return workshop.resolve(maker.make(BareStarts.plan(bare, name, box, WorkshopReader.read(workshop))));
    }

    /** A folder that is no workshop yet becomes one like the demo's. */
    private static void begin(Path demo, Path workshop) throws IOException {
        if (!Files.exists(workshop.resolve("workshop.yaml"))) {
            Files.createDirectories(workshop);
            WholeFile.write(workshop.resolve("workshop.yaml"), Files.readAllBytes(demo.resolve("workshop.yaml")));
        }
    }

    /**
     * @param demo the workshop that the example is of; may be this one
     * @param title the new design's name
     * @param trial of the new folder before it appears; what it throws leaves all as it was
     */
    static Path make(Path demo, Path workshop, String name, String title, String example, Consumer<Path> trial)
            throws IOException {
        List<String> known = DesignFolders.list(demo);
        if (!known.contains(example)) {
            throw new UnknownDesignException(
                    example,
                    Stream.concat(known.stream(), BareStarts.ALL.stream().map(BareStarts.Bare::id))
                            .toList());
        }
        Path folder = workshop.resolve(name);
        if (Files.exists(folder)) {
            throw new FileAlreadyExistsException(
                    folder.toString(), null, "there is something of that name already; nothing was changed");
        }
        begin(demo, workshop);
        Path aside = Aside.in(workshop);
        List<Path> brought = new ArrayList<>();
        try {
            copy(demo, workshop, aside, title, example, brought);
            trial.accept(aside);
            Files.move(aside, folder, StandardCopyOption.ATOMIC_MOVE);
            brought.clear();
        } finally {
            Aside.remove(aside);
            brought.forEach(Aside::remove);
        }
        return folder;
    }

    /** @param brought told the folders of boxes and figures that the workshop lacked */
    private static void copy(Path demo, Path workshop, Path folder, String title, String example, List<Path> brought)
            throws IOException {
        Path source = demo.resolve(example);
        Design design = DesignReader.read(source);
        Aside.copyTree(source, folder);
        String box = bring(demo, source.resolve(design.file().box()).normalize(), workshop, folder, brought);
        String figure = bring(demo, source.resolve(design.file().figure()).normalize(), workshop, folder, brought);
        Path file = folder.resolve("design.yaml");
        String text = Files.readString(file, StandardCharsets.UTF_8);
        text = YamlEdit.set(DesignReader.FILE, text, List.of("name"), YamlWords.quoted(title));
        text = YamlEdit.set(DesignReader.FILE, text, List.of("box"), YamlWords.quoted(box));
        text = YamlEdit.set(DesignReader.FILE, text, List.of("figure"), YamlWords.quoted(figure));
        Files.writeString(file, text, StandardCharsets.UTF_8);
    }

    /** Copies the folder of a box or figure file, when the workshop lacks it; returns its path from the new folder. */
    private static String bring(Path demo, Path file, Path workshop, Path folder, List<Path> brought)
            throws IOException {
        Path source = Objects.requireNonNull(file.getParent());
        if (source.equals(folder) || Files.exists(folder.resolve(file.getFileName()))) {
            return file.getFileName().toString();
        }
        Path target = workshop.resolve(demo.relativize(source).toString());
        if (!Files.exists(target)) {
            Aside.copy(source, target);
            brought.add(target);
        }
        return folder.toAbsolutePath()
                .relativize(target.toAbsolutePath().resolve(file.getFileName()))
                .toString()
                .replace('\\', '/');
    }
}
