package jackwork.design;

import jackwork.drawing.Drawing;
import jackwork.geometry.Point;
import jackwork.stock.Coins;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A design read and found consistent: every name it uses exists, every point is known.
 *
 * <p>Box and figure share one frame, the box drawing's; {@code figureShift} carries the figure's
 * drawing into it so that the mounts meet.
 *
 * @param folder where design.yaml stands
 * @param figureShift mm, added to every point of the figure's drawing
 * @param version of its files, as {@link DesignFiles#version()}, by the bytes that were read, whatever became of them since;
 *     empty where it was read like another
 */
public record Design(
        Path folder,
        DesignFile file,
        WorkshopFile workshop,
        BoxFile box,
        Drawing boxDrawing,
        FigureFile figure,
        Drawing figureDrawing,
        Point figureShift,
        String version) {

    public String name() {
        return file.name();
    }

    Design ofVersion(String files) {
        return new Design(folder, file, workshop, box, boxDrawing, figure, figureDrawing, figureShift, files);
    }

    /**
     * The same design asked about other coins.
     *
     * @throws DesignException when a coin is not in the catalogue
     */
    public Design withCoins(List<String> coins) {
        List<String> known = Coins.catalogue().names();
        List<Problem> problems = coins.stream()
                .filter(coin -> !known.contains(coin))
                .map(coin -> new Problem(
                        "coins",
                        0,
                        0,
                        "read \"" + coin + "\", expected a coin of the catalogue" + NearestWord.hint(coin, known)))
                .toList();
        if (!problems.isEmpty()) {
            throw new DesignException(problems);
        }
        if (Set.copyOf(coins).size() < coins.size()) {
            throw DesignException.of("coins", "read " + String.join(", ", coins) + ", expected each coin once");
        }
        DesignFile other = new DesignFile(
                file.format(),
                file.name(),
                file.box(),
                file.figure(),
                coins,
                file.gestures(),
                file.change(),
                file.adjusters());
        return new Design(folder, other, workshop, box, boxDrawing, figure, figureDrawing, figureShift, version);
    }

    /**
     * The same design cut from sheets as measured.
     *
     * @param thickness mm, by the workshop's names
     * @throws DesignException when the workshop has no such sheet, or a thickness is none
     */
    public Design withMeasured(Map<String, Double> thickness) {
        List<String> known = List.copyOf(workshop.sheets().keySet());
        List<Problem> problems = new ArrayList<>();
        thickness.forEach((stock, value) -> {
            if (!known.contains(stock)) {
                problems.add(new Problem(
                        "measured",
                        0,
                        0,
                        "read \"" + stock + "\", expected a sheet of workshop.yaml" + NearestWord.hint(stock, known)));
            } else if (!(value > 0.2 && value < 50)) {
                problems.add(new Problem(
                        "measured", 0, 0, "read " + value + " mm for " + stock + ", expected 0.2 to 50 mm"));
            }
        });
        if (!problems.isEmpty()) {
            throw new DesignException(problems);
        }
        WorkshopFile other = workshop.withMeasured(thickness);
        return new Design(folder, file, other, box, boxDrawing, figure, figureDrawing, figureShift, version);
    }

    /** The same design in a workshop with other numbers, and the same names of sheets, rods and cords. */
    public Design withWorkshop(WorkshopFile other) {
        return new Design(folder, file, other, box, boxDrawing, figure, figureDrawing, figureShift, version);
    }

    /** The same design put together by a beginner, whose holes, glue and paint spread so many times as wide. */
    public Design forBeginner(double times) {
        return withWorkshop(workshop.forBeginner(times));
    }

    /** Whether these are the box's works, and not the figure's. */
    @SuppressWarnings("ReferenceEquality") // one and the same, not one that says the same
    public boolean isOfBox(Works works) {
        return works == box.works();
    }

    /** The box's or the figure's file by its own name, as complaints begin with it. */
    public String fileOf(Works works) {
        String path = isOfBox(works) ? file.box() : file.figure();
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /**
     * Where an entry of that name stands, as {@code figure.yaml: pins.hip}; empty when neither file has one.
     *
     * @param name of a joint or a part; what is added to it after a slash is left out
     */
    public Optional<String> placeOf(String name) {
        String own = name.contains("/") ? name.substring(0, name.indexOf('/')) : name;
        for (Works works : List.of(figure.works(), box.works())) {
            for (Map.Entry<String, Map<String, ?>> section : sections(works).entrySet()) {
                if (section.getValue().containsKey(own)) {
                    return Optional.of(fileOf(works) + ": " + section.getKey() + "." + own);
                }
            }
        }
        return Optional.empty();
    }

    /** Joints before parts: a joint is asked for by its name more often. */
    private static Map<String, Map<String, ?>> sections(Works works) {
        Map<String, Map<String, ?>> sections = new LinkedHashMap<>();
        Sections.of(works).forEach((section, entries) -> {
            if (!section.equals("parts")) {
                sections.put(section, entries);
            }
        });
        sections.put("parts", works.parts());
        return sections;
    }

    /** A place of the box, in the common frame. {@code fallback} names the circle when no place is written. */
    public Point inBox(@Nullable Place place, String fallback) {
        return References.point(boxDrawing, place, fallback);
    }

    /** A place of the figure, in the common frame. */
    public Point inFigure(@Nullable Place place, String fallback) {
        return References.point(figureDrawing, place, fallback).plus(figureShift);
    }
}
