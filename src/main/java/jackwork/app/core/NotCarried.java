package jackwork.app.core;

import jackwork.design.Design;
import jackwork.design.DesignEdit;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.FileKind;
import jackwork.design.OldFiles;
import jackwork.design.Problem;
import jackwork.design.RenewedText;
import jackwork.design.WorkshopReader;
import jackwork.design.YamlEdit;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import jackwork.stock.Uncertain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What files of an earlier format said that today's do not say: keys that went, and ends of a way that were taken for granted
 * and have no wood. A line each, with file and line: of what went as the file was, of what is to be mended as it is then. What
 * several designs share is told once.
 */
final class NotCarried {

    /** Names of designs that a line lists. */
    private static final int MOST_NAMES = 3;

    private final Path workshop;

    NotCarried(Path workshop) {
        this.workshop = workshop;
    }

    /**
     * @param what before the names of the designs that it is told of
     * @param rest behind them
     * @param design one of those; empty where it is told of a file alone
     */
    record Line(String place, String what, String rest, String design) {

        static Line of(String place, String what) {
            return new Line(place, what, "", "");
        }

        private String key() {
            return place + "\n" + what + "\n" + rest;
        }
    }

    /** Each once, with the names of its designs. */
    static List<String> words(List<Line> lines) {
        Map<String, Set<String>> designs = new LinkedHashMap<>();
        Map<String, Line> first = new LinkedHashMap<>();
        for (Line line : lines) {
            first.putIfAbsent(line.key(), line);
            designs.computeIfAbsent(line.key(), key -> new LinkedHashSet<>()).add(line.design());
        }
        return first.entrySet().stream()
                .map(entry -> words(entry.getValue(), List.copyOf(designs.get(entry.getKey()))))
                .toList();
    }

    private static String words(Line line, List<String> designs) {
        int more = designs.size() - MOST_NAMES;
        String names = String.join(", ", designs.subList(0, Math.min(MOST_NAMES, designs.size())))
                + (more > 0 ? " and " + more + " more" : "");
        return (line.place().isEmpty() ? "" : line.place() + ": ") + line.what() + names + line.rest();
    }

    /** A file that stays as it is. */
    static Line left(Problem problem) {
        return Line.of(
                place(problem.file(), problem.line()),
                "this file is left as it is: " + problem.message() + ". Mend it, then do this step again");
    }

    Line gone(OldFiles.Old file, RenewedText.Gone gone) {
        return Line.of(
                place(file.name(), gone.line()),
                gone.key() + " " + gone.value() + " is gone: it " + gone.now() + by(gone.by()));
    }

    /** What a number of the workshop is now. */
    private String by(String number) {
        if (!number.equals("fits.running")) {
            return "";
        }
        try {
            Uncertain running = WorkshopReader.parse(renewedWorkshop()).fits().running();
            return " (" + DesignEdit.words(running.value()) + " mm wider than the rod)";
        } catch (DesignException e) {
            return "";
        }
    }

    private String renewedWorkshop() {
        return RenewedText.of(FileKind.WORKSHOP, WorkshopReader.FILE, WorkshopReader.text(workshop))
                .text();
    }

    /** @param texts of the files as they would be, by absolute path */
    List<Line> ofDesigns(Map<Path, String> texts) throws IOException {
        List<Line> lines = new ArrayList<>();
        for (String id : DesignFolders.list(workshop)) {
            Path folder = workshop.resolve(id);
            if (WorkshopReader.folderOf(folder).filter(workshop::equals).isEmpty()) {
                continue; // of a workshop within this one
            }
            try {
                Design design = DesignReader.read(folder, texts);
                Ends ends = new Ends(id, design, Assembler.assemble(design), texts);
                ends.assembly.ends().stream()
                        .filter(stopping -> !stopping.isProvided())
                        .forEach(stopping -> lines.add(ends.line(stopping)));
            } catch (DesignException e) {
                e.problems().forEach(problem -> lines.add(Line.of("", id + " cannot be opened yet: " + problem)));
            } catch (RuntimeException e) {
                if (!Trials.isMakers(e)) {
                    throw e;
                }
                lines.add(Line.of("", id + " cannot be worked out yet: " + e.getMessage()));
            }
        }
        return lines;
    }

    private static String place(String file, int line) {
        return line == 0 ? file : file + " line " + line;
    }

    /** Where a design's files say how far something goes. */
    private final class Ends {

        private final String id;
        private final Assembly assembly;
        private final Design design;
        private final Map<Path, String> texts;

        Ends(String id, Design design, Assembly assembly, Map<Path, String> texts) {
            this.id = id;
            this.assembly = assembly;
            this.design = design;
            this.texts = texts;
        }

        Line line(Stopping stopping) {
            TurningEnd end = stopping.end();
            String part = part(end);
            String what = "the " + (end.isWritten() ? part : end.name())
                    + number(end).map(words -> " (" + words + ")").orElse("");
            Stopping.Obstacle met = stopping.met();
            return met != null && stopping.off() < 0
                    ? new Line(
                            where(end),
                            what + " is stopped before it gets there, by " + met.by() + ", in ",
                            ": move that",
                            id)
                    : new Line(
                            where(end),
                            "nothing in ",
                            " stops " + what + ": add a pin with stops: {part: " + part + ", when: " + end.when() + "}",
                            id);
        }

        private String part(TurningEnd end) {
            return switch (end.kind()) {
                case LEVER_RESTS, LEVER_PRESSED -> design.box().lever().part();
                case BUCKET_RESTS, BUCKET_TIPPED ->
                    design.box().coinWorks().bucket().part();
                case FROM, TO -> assembly.body(end.body()).name();
            };
        }

        /** The number that was the end once. */
        private Optional<String> number(TurningEnd end) {
            String degrees = DesignEdit.words(Math.abs(Math.toDegrees(end.at())));
            return switch (end.kind()) {
                case LEVER_PRESSED -> end.wished() ? Optional.of("throw " + degrees) : Optional.empty();
                case BUCKET_TIPPED -> end.wished() ? Optional.of("tip " + degrees) : Optional.empty();
                case FROM, TO ->
                    Optional.of(
                            "stop " + end.of() + ", " + end.when() + " " + DesignEdit.words(Math.toDegrees(end.at())));
                case LEVER_RESTS, BUCKET_RESTS -> Optional.empty();
            };
        }

        private String where(TurningEnd end) {
            List<String> path = switch (end.kind()) {
                case LEVER_RESTS -> List.of("lever");
                case LEVER_PRESSED -> List.of("lever", "throw");
                case BUCKET_RESTS -> List.of("coin-works", "bucket");
                case BUCKET_TIPPED -> List.of("coin-works", "bucket", "tip");
                case FROM, TO -> List.of("stops", end.of(), end.when());
            };
            Path file = design.folder().resolve(DesignReader.FILE);
            Path box = design.folder().resolve(design.file().box());
            Path figure = design.folder().resolve(design.file().figure());
            return at(file, List.of("change", "box." + String.join(".", path)))
                    .or(() -> at(file, List.of("change", "figure." + String.join(".", path))))
                    .or(() -> at(box, path))
                    .or(() -> at(figure, path))
                    .or(() -> at(box, path.subList(0, path.size() - 1)))
                    .orElse(name(box));
        }

        private Optional<String> at(Path file, List<String> path) {
            Path plain = file.toAbsolutePath().normalize();
            String text = texts.get(plain);
            try {
                String now = text == null ? Files.readString(plain) : text;
                int line = path.isEmpty() ? 0 : YamlEdit.lineOf(name(plain), now, path);
                return line == 0 ? Optional.empty() : Optional.of(place(name(plain), line));
            } catch (IOException | DesignException e) {
                return Optional.empty();
            }
        }

        private String name(Path file) {
            return workshop.relativize(file.toAbsolutePath().normalize())
                    .toString()
                    .replace('\\', '/');
        }
    }
}
