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

    static final String FILE = "workshop.yaml";

    private WorkshopReader() {}

    /**
     * @param folder the workshop's
     * @throws DesignException when it cannot be used as it is
     */
    public static WorkshopFile read(Path folder) {
        List<Problem> problems = new ArrayList<>();
        YamlFile file = YamlFile.read(folder.resolve(FILE), problems);
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
        checkSize("laser.bed", workshop.laser().bed(), file);
        positive("laser.kerf", workshop.laser().kerf().low() >= 0, file);
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
        List<String> known = Paper.ALL.stream().map(Paper::name).toList();
        if (paper != null && !known.contains(paper)) {
            file.problem("paper", "read \"" + paper + "\", expected " + String.join(", ", known));
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
