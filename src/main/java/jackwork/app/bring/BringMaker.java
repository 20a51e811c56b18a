package jackwork.app.bring;

import jackwork.app.core.Aside;
import jackwork.app.core.Attempt;
import jackwork.app.core.OwnCores;
import jackwork.app.core.ReportMaker;
import jackwork.app.core.SceneMaker;
import jackwork.app.core.Shown;
import jackwork.app.core.Workbench;
import jackwork.app.wire.Pair;
import jackwork.check.Subject;
import jackwork.design.BoxDrawn;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.WholeFile;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import jackwork.make.MakeException;
import jackwork.motion.model.MechanismException;
import jackwork.parts.PartException;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes the folder of a new design: first aside, then read back and tried, and moved into its place in one step. */
final class BringMaker {

    private final Path workshop;

    BringMaker(Path workshop) {
        this.workshop = workshop;
    }

    /** What would come of it; nothing stays on the disk. */
    Attempt attempt(BringPlan plan) {
        BringFigure figure = figure(plan);
        Pair shift = Pair.of(figure.shift());
        if (!figure.complaints().isEmpty()) {
            return new Attempt(shift, figure.complaints(), null, null);
        }
        Path aside = Aside.in(workshop);
        try {
            write(figure, aside);
            Subject subject = Subject.asNumbered(DesignReader.read(aside));
            return new Attempt(
                    shift,
                    List.of(),
                    SceneMaker.of(subject.assembly()),
                    ReportMaker.motion(subject.assembly(), subject.stroke()));
        } catch (UncheckedIOException e) {
            throw full(e);
        } catch (DesignException | PartException | MechanismException e) {
            return new Attempt(shift, List.of(complaint(figure, e)), null, null);
        } finally {
            Aside.remove(aside);
        }
    }

    /**
     * Makes the design.
     *
     * @return its id
     * @throws BringException when it cannot be made; nothing is left behind then
     */
    String make(BringPlan plan) {
        String name = BringNames.folder(plan.name());
        Path folder = workshop.resolve(name);
        if (!folder.normalize().startsWith(workshop) || Files.exists(folder)) {
            throw new BringException(
                    "there is something called \"" + name + "\" in the workshop already", "Choose another name.");
        }
        BringFigure figure = figure(plan);
        requireSound(figure.complaints());
        Path aside = Aside.in(workshop);
        try {
            write(figure, aside);
            tryWhole(name, aside);
            Files.move(aside, folder, StandardCopyOption.ATOMIC_MOVE);
            return name;
        } catch (DesignException | PartException | MechanismException | MakeException e) {
            throw new BringException(complaint(figure, e).words(), "Nothing was written.");
        } catch (IOException | UncheckedIOException e) {
            throw full(e);
        } finally {
            Aside.remove(aside);
        }
    }

    /** All that the page shows of a design that is not in its place yet; it can be opened once it is. */
    static void tryWhole(String id, Path folder) {
        OwnCores.use(Workbench.LONGEST, () -> Shown.of(id, "", DesignReader.read(folder), List.of()));
    }

    private static BringException full(Exception e) {
        return new BringException(
                "the workshop's folder cannot be written to (" + e.getMessage() + ")", "Nothing was changed.");
    }

    private static void requireSound(List<Attempt.Complaint> complaints) {
        if (!complaints.isEmpty()) {
            Attempt.Complaint first = complaints.get(0);
            throw new BringException(
                    first.about().isEmpty() ? first.words() : first.about() + ": " + first.words(),
                    "Nothing was written.");
        }
    }

    private BringFigure figure(BringPlan plan) {
        WorkshopFile file = WorkshopReader.read(workshop);
        BoxDrawn box = boxes().stream()
                .filter(known -> known.id().equals(plan.box()))
                .findFirst()
                .orElseThrow(() -> new BringException(
                        "the workshop has no box \"" + plan.box() + "\"", "Choose one of its boxes."));
        return BringFigure.of(plan, box, file);
    }

    List<BoxDrawn> boxes() {
        try {
            return BoxDrawn.list(workshop).stream()
                    .filter(box -> !box.mounts().isEmpty())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(BringFigure figure, Path folder) {
        try {
            Files.createDirectory(folder);
        } catch (IOException e) {
            throw full(e);
        }
        BringPlan plan = figure.plan();
        WholeFile.save(folder.resolve("figure.svg"), BringText.drawing(figure));
        WholeFile.save(folder.resolve("figure.yaml"), BringText.figure(figure));
        WholeFile.save(folder.resolve("design.yaml"), BringText.design(plan, "../" + plan.box(), coins(figure.box())));
    }

    /**
     * Those of another design on that box, here or in the demo whose box it is, else all that pass its slot and are of the
     * workshop's currency.
     */
    private List<String> coins(BoxDrawn box) {
        try {
            Path demo = Demo.original();
            for (Path folder : List.of(workshop, demo)) {
                for (String id : DesignFolders.list(folder)) {
                    Design other = readable(folder.resolve(id));
                    if (other != null
                            && other.folder()
                                    .resolve(other.file().box())
                                    .normalize()
                                    .equals(folder.resolve(box.id()))) {
                        return other.file().coins();
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String currency = WorkshopReader.read(workshop).currency();
        return Coins.catalogue().all().stream()
                .filter(coin -> coin.name().startsWith(currency)
                        && coin.diameter() < box.box().coinWorks().slot().length()
                        && coin.thickness() < box.box().coinWorks().slot().width())
                .map(Coin::name)
                .toList();
    }

    private static @Nullable Design readable(Path folder) {
        try {
            return DesignReader.read(folder);
        } catch (DesignException e) {
            return null;
        }
    }

    /** The reader's or the engine's own words, with the part that they speak of. */
    private static Attempt.Complaint complaint(BringFigure figure, RuntimeException e) {
        String words = String.valueOf(e.getMessage());
        String about = figure.parts().keySet().stream()
                .filter(part -> words.matches("(?s).*\\b" + part + "\\b.*"))
                .findFirst()
                .orElse("");
        return new Attempt.Complaint(about, words);
    }
}
