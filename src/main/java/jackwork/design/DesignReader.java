package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.drawing.DrawingException;
import jackwork.drawing.SvgReader;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a design with the box, figure, drawings and workshop it stands in, and holds them against each other. */
public final class DesignReader {

    public static final String FILE = "design.yaml";
    private static final long MOST_DRAWING_BYTES = 20L << 20;
    /** How far the second mount may be off, mm. */
    private static final double MOUNTS_AGREE = 0.1;

    private final Path workshopFolder;
    private final Map<Path, String> texts;
    /** The same design as it was read before; null when it is read for the first time. */
    private final @Nullable Design known;

    private final List<Problem> problems = new ArrayList<>();
    /** What was taken from each file: it may be another by now. */
    private final Map<Path, byte[]> taken = new HashMap<>();

    private DesignReader(Path workshopFolder, Map<Path, String> texts, @Nullable Design known) {
        this.known = known;
        this.workshopFolder = workshopFolder;
        this.texts = texts;
    }

    /**
     * @param design its folder, or its {@code design.yaml}
     * @throws DesignException with every complaint, when it cannot be used as it is
     */
    public static Design read(Path design) {
        return read(design, Map.of());
    }

    /**
     * A design as it would be with another text of its {@code design.yaml}; nothing is written.
     *
     * @throws DesignException as {@link #read(Path)}
     */
    public static Design read(Path design, String text) {
        Path file = Files.isDirectory(design) ? design.resolve(FILE) : design;
        return read(design, Map.of(file.toAbsolutePath().normalize(), text));
    }

    /**
     * A design as it would be with other texts of its YAML files and drawings; nothing is written.
     *
     * @param texts by the file's absolute path; what is not in it is read from disk
     * @throws DesignException as {@link #read(Path)}
     */
    public static Design read(Path design, Map<Path, String> texts) {
        return read(design, texts, null);
    }

    /**
     * A design read before, as it would be with other texts of its YAML files. Its drawings and pictures are taken as they
     * were: this is asked many times a second.
     *
     * @throws DesignException as {@link #read(Path)}
     */
    public static Design readLike(Design known, Map<Path, String> texts) {
        return read(known.folder(), texts, known);
    }

    private static Design read(Path design, Map<Path, String> texts, @Nullable Design known) {
        Path file = Files.isDirectory(design) ? design.resolve(FILE) : design;
        Path folder = parent(file);
        if (!Files.isRegularFile(file)) {
            throw DesignException.of(file.toString(), "no such file; expected the folder of a design");
        }
        Path workshop = WorkshopReader.folderOf(folder)
                .orElseThrow(() -> DesignException.of(
                        folder.toString(),
                        "no workshop.yaml here or in a folder above; a design belongs to a workshop"));
        DesignReader reader = new DesignReader(workshop, texts, known);
        return reader.read(folder, reader.yaml(file));
    }

    /** The figure file that a design names, without reading that; empty when the design itself cannot be read. */
    public static Optional<Path> figureOf(Path design) {
        try {
            String text = text(design);
            return YamlEdit.valueAt(FILE, text, List.of("figure")) instanceof String figure
                    ? Optional.of(design.resolve(figure.substring(figure.indexOf(' ') + 1))
                            .toAbsolutePath()
                            .normalize())
                    : Optional.empty();
        } catch (DesignException e) {
            return Optional.empty();
        }
    }

    /** A {@code design.yaml} alone, not held against its box and figure. */
    public static DesignFile parse(String text) {
        List<Problem> problems = new ArrayList<>();
        DesignFile file = new Binder(YamlFile.parse(FILE, text, problems)).bind(DesignFile.class);
        YamlFile.requireNone(problems);
        if (file == null) {
            throw DesignException.of(FILE, "could not be read");
        }
        return file;
    }

    /** The text of a design's {@code design.yaml}. */
    public static String text(Path design) {
        Path file = Files.isDirectory(design) ? design.resolve(FILE) : design;
        return YamlFile.text(file, FILE);
    }

    private static Path parent(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        return parent == null ? file : parent;
    }

    private YamlFile yaml(Path path) {
        String name = path.getFileName().toString();
        return YamlFile.parse(name, text(path, name), problems);
    }

    /** Of a YAML file: as it would be, or from the disk. */
    private String text(Path path, String name) {
        Path plain = path.toAbsolutePath().normalize();
        String would = texts.get(plain);
        String text = would == null ? YamlFile.text(path, name) : would;
        taken.put(plain, text.getBytes(StandardCharsets.UTF_8));
        return text;
    }

    private Design read(Path folder, YamlFile designYaml) {
        WorkshopFile workshop =
                WorkshopReader.parse(text(workshopFolder.resolve(WorkshopReader.FILE), WorkshopReader.FILE));
        Format.requireNow(designYaml);
        DesignFile design = new Binder(designYaml).bind(DesignFile.class);
        if (design == null) {
            throw new DesignException(problems);
        }
        Format.check(design.format(), designYaml);
        int before = problems.size();
        Path boxPath = inside(folder, design.box(), "box", designYaml);
        Path figurePath = inside(folder, design.figure(), "figure", designYaml);
        requireNoMore(before);
        YamlFile boxYaml = yaml(boxPath);
        YamlFile figureYaml = yaml(figurePath);
        Format.requireNow(boxYaml);
        Format.requireNow(figureYaml);
        Changes.apply(designYaml, Map.of("box", boxYaml, "figure", figureYaml));
        Binder boxBinder = new Binder(boxYaml);
        BoxFile box = boxBinder.bind(BoxFile.class);
        Binder figureBinder = new Binder(figureYaml);
        FigureFile figure = figureBinder.bind(FigureFile.class);
        if (box == null || figure == null || !boxBinder.namesAreWhole() || !figureBinder.namesAreWhole()) {
            YamlFile.requireNone(problems);
            throw DesignException.of(FILE, "its box or figure could not be read");
        }
        Format.check(box.format(), boxYaml);
        Format.check(figure.format(), figureYaml);
        Design known = this.known;
        Drawing boxDrawing = known != null
                        && known.box().works().drawing().equals(box.works().drawing())
                ? known.boxDrawing()
                : drawing(boxPath, box.works().drawing(), boxYaml);
        Drawing figureDrawing = known != null
                        && known.figure()
                                .works()
                                .drawing()
                                .equals(figure.works().drawing())
                ? known.figureDrawing()
                : drawing(figurePath, figure.works().drawing(), figureYaml);
        References references = new References(workshop, box, boxYaml, boxDrawing, figure, figureYaml, figureDrawing);
        if (!problems.isEmpty()) {
            // What numbers do to each other is nothing to tell of those that stand in for others; names are.
            references.checkNames(design, designYaml);
            throw new DesignException(problems);
        }
        references.check();
        references.checkDesign(design, designYaml);
        if (known == null) {
            pictures(box.works(), boxPath, boxYaml);
            pictures(figure.works(), figurePath, figureYaml);
        }
        YamlFile.requireNone(problems);
        Point shift = shift(box, boxDrawing, figure, figureDrawing, figureYaml);
        YamlFile.requireNone(problems);
        Design read = new Design(folder, design, workshop, box, boxDrawing, figure, figureDrawing, shift, "");
        AdjusterReferences.check(read, designYaml);
        YamlFile.requireNone(problems);
        return known == null ? read.ofVersion(DesignFiles.of(read).versionOf(taken)) : read;
    }

    /** Stops where something came up since then that nothing more can be read without. */
    private void requireNoMore(int before) {
        if (problems.size() > before) {
            throw new DesignException(new ArrayList<>(problems));
        }
    }

    /** Everything that was wrong so far, and what cannot be read at all. */
    private DesignException with(Problem last) {
        List<Problem> all = new ArrayList<>(problems);
        all.add(last);
        return new DesignException(all);
    }

    /** A file named by another, which must lie in the workshop's folder, links followed. */
    private Path inside(Path folder, String name, String key, YamlFile file) {
        Path path;
        try {
            path = folder.resolve(name).normalize();
        } catch (InvalidPathException e) {
            file.problem(key, "read a name that no file can have: " + e.getReason());
            return folder;
        }
        if (!Files.isRegularFile(path)) {
            file.problem(key, "read \"" + name + "\", but there is no such file beside " + file.name());
            return path;
        }
        try {
            if (!path.toRealPath().startsWith(workshopFolder.toRealPath())) {
                file.problem(key, "read \"" + name + "\", which lies outside the workshop's folder; copy it in");
            }
        } catch (IOException e) {
            file.problem(key, "read \"" + name + "\", which cannot be opened: " + e.getMessage());
        }
        return path;
    }

    private void pictures(Works works, Path beside, YamlFile file) {
        works.pictures().forEach((part, picture) -> {
            String key = "pictures." + part + ".file";
            int before = problems.size();
            Path path = inside(parent(beside), picture.file(), key, file);
            if (problems.size() == before) {
                PictureReferences.check(path, key, file)
                        .ifPresent(bytes -> taken.put(path.toAbsolutePath().normalize(), bytes));
            }
        });
    }

    private Drawing drawing(Path beside, String name, YamlFile file) {
        Path folder = parent(beside);
        int before = problems.size();
        Path path = inside(folder, name, "drawing", file);
        requireNoMore(before);
        Path plain = path.toAbsolutePath().normalize();
        String would = texts.get(plain);
        try {
            if (would == null && Files.size(path) > MOST_DRAWING_BYTES) {
                throw DesignException.of(name, "is larger than 20 MiB; save outlines without embedded pictures");
            }
            byte[] bytes = would == null ? Files.readAllBytes(path) : would.getBytes(StandardCharsets.UTF_8);
            taken.put(plain, bytes);
            return SvgReader.read(name, bytes);
        } catch (DrawingException e) {
            throw with(new Problem(name, e.line(), e.column(), afterPlace(e)));
        } catch (IOException e) {
            throw DesignException.of(name, "cannot be read: " + e.getMessage());
        }
    }

    /** The drawing's message without the place that stands before it already. */
    private static String afterPlace(DrawingException e) {
        String place = e.file() + ":" + e.line() + ":" + e.column() + ": ";
        String message = String.valueOf(e.getMessage());
        return message.startsWith(place) ? message.substring(place.length()) : message;
    }

    /** What carries the figure's first mount onto the box's; the other mounts must follow. */
    private static Point shift(
            BoxFile box, Drawing boxDrawing, FigureFile figure, Drawing figureDrawing, YamlFile yaml) {
        Point shift = null;
        for (Map.Entry<String, MountEntry> mount : figure.works().mounts().entrySet()) {
            String name = mount.getKey();
            Point onBox = References.point(
                    boxDrawing, Named.in(box.works().mounts(), name).at(), name);
            Point onFigure = References.point(figureDrawing, mount.getValue().at(), name);
            Point here = onBox.minus(onFigure);
            if (shift == null) {
                shift = here;
            } else if (shift.distance(here) > MOUNTS_AGREE) {
                yaml.problem(
                        "mounts." + name,
                        String.format(
                                java.util.Locale.ROOT,
                                "with the first mount in place, the figure's %s stands %.2f mm right and %.2f mm above the box's;"
                                        + " draw the mounts alike in both",
                                name,
                                shift.minus(here).x(),
                                shift.minus(here).y()));
            }
        }
        return shift == null ? Point.ORIGIN : shift;
    }
}
