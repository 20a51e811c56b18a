package jackwork.design;

import jackwork.drawing.Paper;
import jackwork.stock.Rods;
import jackwork.stock.Sheets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code workshop.yaml}. */
public final class WorkshopReader {

    public static final String FILE = "workshop.yaml";

    private static final List<String> PENS = List.of("engrave", "inside", "outside", "marks");

    private WorkshopReader() {}

    /**
     * @param folder the workshop's
     * @throws DesignException when it cannot be used as it is
     */
    public static WorkshopFile read(Path folder) {
        List<Problem> problems = new ArrayList<>();
        return bound(YamlFile.read(folder.resolve(FILE), problems), problems);
    }

    /** The same from text that is in hand. */
    public static WorkshopFile parse(String text) {
        List<Problem> problems = new ArrayList<>();
        return bound(YamlFile.parse(FILE, text, problems), problems);
    }

    /** The text of a workshop's file. */
    public static String text(Path folder) {
        return YamlFile.text(folder.resolve(FILE), FILE);
    }

    private static WorkshopFile bound(YamlFile file, List<Problem> problems) {
        WorkshopFile workshop = new Binder(file).bind(WorkshopFile.class);
        YamlFile.requireNone(problems);
        if (workshop == null) {
            throw DesignException.of(FILE, "could not be read");
        }
        check(workshop, file);
        YamlFile.requireNone(problems);
        return workshop;
    }

    /** The nearest folder at or above this one that has a {@code workshop.yaml}. */
    public static Optional<Path> folderOf(Path inside) {
        for (Path folder = inside.toAbsolutePath().normalize(); folder != null; folder = folder.getParent()) {
            if (Files.isRegularFile(folder.resolve(FILE))) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    private static void check(WorkshopFile workshop, YamlFile file) {
        DesignReader.checkFormat(workshop.format(), file);
        checkPaper(workshop, file);
        WorkshopAcross.check(workshop, file);
        PayReferences.check(workshop, file);
        checkSize("laser.bed", workshop.laser().bed(), file);
        positive("laser.kerf", workshop.laser().kerf().low() >= 0, file);
        workshop.laser().lines().forEach((name, pen) -> {
            String path = "laser.lines." + name;
            References.known(path, name, PENS, "engrave, inside, outside or marks", file);
            if (!pen.colour().matches("#[0-9A-Fa-f]{6}")) {
                file.problem(path + ".colour", "read \"" + pen.colour() + "\", expected a colour as \"#rrggbb\"");
            }
            if (!(pen.width() > 0 && pen.width() < 10)) {
                file.problem(path + ".width", "read " + pen.width() + ", expected more than 0 and less than 10 mm");
            }
        });
        workshop.have().forEach((item, amount) -> positive("have." + item, amount >= 0, file));
        workshop.sheets().forEach((name, sheet) -> {
            List<String> known = Sheets.catalogue().names();
            if (!known.contains(sheet.kind())) {
                file.problem(
                        "sheets." + name + ".kind",
                        "read \"" + sheet.kind() + "\", expected a sheet of the catalogue"
                                + NearestWord.hint(sheet.kind(), known));
            }
            checkSize("sheets." + name + ".size", sheet.size(), file);
            positive("sheets." + name + ".thickness", sheet.thickness().low() > 0, file);
        });
        workshop.rods().forEach((name, rod) -> {
            List<String> known = Rods.catalogue().names();
            if (!known.contains(rod.kind())) {
                file.problem(
                        "rods." + name + ".kind",
                        "read \"" + rod.kind() + "\", expected a rod of the catalogue"
                                + NearestWord.hint(rod.kind(), known));
            }
            positive("rods." + name + ".diameter", rod.diameter().low() > 0, file);
        });
        workshop.cords().forEach((name, cord) -> {
            positive("cords." + name + ".diameter", cord.diameter().low() > 0, file);
            positive("cords." + name + ".holds", cord.holds().low() > 0, file);
        });
        Printer printer = workshop.printerOrGuess();
        if (printer.bed().size() != 3 || printer.bed().stream().anyMatch(v -> !(v > 0 && v < 10_000))) {
            file.problem("printer.bed", "expected [width, depth, height] in mm, all more than 0");
        }
        positive("printer.density", printer.density().low() > 0, file);
        for (int i = 0; i < workshop.friction().size(); i++) {
            if (workshop.friction().get(i).between().size() != 2) {
                file.problem("friction." + i + ".between", "expected two materials, as in [bamboo, wood]");
            }
            positive(
                    "friction." + i + ".coefficient",
                    workshop.friction().get(i).coefficient().low() >= 0,
                    file);
        }
    }

    private static void checkPaper(WorkshopFile workshop, YamlFile file) {
        String paper = workshop.paper();
        if (paper != null && Paper.named(paper).isEmpty()) {
            file.problem("paper", "read \"" + paper + "\", expected " + Paper.NAMES);
        }
    }

    private static void positive(String path, boolean fine, YamlFile file) {
        if (!fine) {
            file.problem(path, "must be more than 0 over its whole interval");
        }
    }

    private static void checkSize(String path, List<Double> size, YamlFile file) {
        if (size.size() != 2 || size.stream().anyMatch(v -> !(v > 0 && v < 100_000))) {
            file.problem(path, "expected [width, height] in mm, both more than 0");
        }
    }
}
