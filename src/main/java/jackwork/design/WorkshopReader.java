package jackwork.design;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
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
        Format.requireNow(file);
        Binder binder = new Binder(file);
        WorkshopFile workshop = binder.bind(WorkshopFile.class);
        if (workshop == null) {
            YamlFile.requireNone(problems);
            throw DesignException.of(FILE, "could not be read");
        }
        if (!problems.isEmpty()) {
            if (binder.namesAreWhole()) {
                checkNames(workshop, file);
            }
            throw new DesignException(problems);
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
        Format.check(workshop.format(), file);
        checkNames(workshop, file);
        WorkshopAcross.check(workshop, file);
        PayReferences.check(workshop, file);
        if (!workshop.currency().matches("[A-Z]{3}")) {
            file.problem("currency", "read \"" + workshop.currency() + "\", expected three capital letters: EUR");
        } else if (!isCurrency(workshop.currency())) {
            file.problem(
                    "currency",
                    "read \"" + workshop.currency() + "\", expected the three letters of a currency (ISO 4217), as EUR,"
                            + " GBP, USD or CHF");
        }
        checkNumbers("laser.bed", workshop.laser().bed(), 2, "[width, height]", file);
        workshop.laser().lines().forEach((name, pen) -> {
            String path = "laser.lines." + name;
            References.known(path, name, PENS, "engrave, inside, outside or marks", file);
            if (!pen.colour().matches("#[0-9A-Fa-f]{6}")) {
                file.problem(path + ".colour", "read \"" + pen.colour() + "\", expected a colour as \"#rrggbb\"");
            }
        });
        workshop.sheets().forEach((name, sheet) -> {
            checkNumbers("sheets." + name + ".size", sheet.size(), 2, "[width, height]", file);
            positive("sheets." + name + ".thickness", sheet.thickness().low() > 0, file);
        });
        workshop.rods()
                .forEach((name, rod) ->
                        positive("rods." + name + ".diameter", rod.diameter().low() > 0, file));
        workshop.cords().forEach((name, cord) -> {
            positive("cords." + name + ".diameter", cord.diameter().low() > 0, file);
            positive("cords." + name + ".holds", cord.holds().low() > 0, file);
        });
        checkNumbers("printer.bed", workshop.printerOrGuess().bed(), 3, "[width, depth, height]", file);
    }

    private static void checkNames(WorkshopFile workshop, YamlFile file) {
        KnownNames.ofWorkshop().check(workshop, file);
        Surfaces.check(workshop, file);
        Goods.check(workshop, file);
    }

    private static boolean isCurrency(String code) {
        return Currency.getAvailableCurrencies().stream()
                .map(Currency::getCurrencyCode)
                .anyMatch(code::equals);
    }

    private static void positive(String path, boolean fine, YamlFile file) {
        if (!fine) {
            file.problem(path, "must be more than 0 over its whole interval");
        }
    }

    private static void checkNumbers(String path, List<Double> numbers, int count, String what, YamlFile file) {
        if (numbers.size() != count) {
            file.problem(path, "expected " + what + " in mm");
        }
    }
}
