package jackwork.app.bring;

import jackwork.app.core.Aside;
import jackwork.app.core.DesignPicture;
import jackwork.app.core.Editor;
import jackwork.app.core.Grounds;
import jackwork.app.core.Workbench;
import jackwork.app.wire.Json;
import jackwork.app.wire.Pair;
import jackwork.app.wire.Requests;
import jackwork.app.wire.UnknownDesignException;
import jackwork.design.BoxDrawn;
import jackwork.design.Design;
import jackwork.design.DesignException;
import jackwork.design.DesignFolders;
import jackwork.design.DesignReader;
import jackwork.design.WorkshopFile;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** New designs: from a drawing or a picture that the maker brings, from an example, from a bare board; drawings redrawn. */
public final class Bringing {

    private static final String OWN = "own/";
    private static final String DEMO = "demo/";
    private static final String BARE = "bare/";

    private final Workbench workbench;
    private final BringMaker maker;
    private final BringRedraw redraw;

    public Bringing(Workbench workbench, Editor editor) {
        this.workbench = workbench;
        Aside.clear(workbench.folder());
        this.maker = new BringMaker(workbench.folder());
        this.redraw = new BringRedraw(workbench, editor);
    }

    /** The most bytes of a file that are looked at. */
    public static int mostBytes() {
        return BringReader.MOST_BYTES;
    }

    /**
     * What a file offers.
     *
     * @throws BringException when it cannot be read
     */
    public String readJson(String file, byte[] bytes, double scale) {
        return Json.compact(BringReader.read(file, bytes, scale));
    }

    /** The workshop's boxes and sheets. */
    public String groundsJson() {
        WorkshopFile workshop = WorkshopReader.read(workbench.folder());
        return Json.compact(new Grounds(
                maker.boxes().stream().map(Bringing::view).toList(),
                workshop.sheets().entrySet().stream()
                        .map(sheet -> new Grounds.SheetView(
                                sheet.getKey(), sheet.getValue().thickness().value()))
                        .toList()));
    }

    private static Grounds.BoxView view(BoxDrawn box) {
        List<Grounds.BoxPart> parts = new ArrayList<>();
        box.box()
                .works()
                .parts()
                .forEach((name, part) -> box.drawing()
                        .outline(BoxDrawn.drawn(box.box(), name))
                        .ifPresent(outline -> {
                            List<List<Pair>> rings = new ArrayList<>();
                            rings.add(Pair.ring(outline.outer()));
                            outline.holes().forEach(hole -> rings.add(Pair.ring(hole)));
                            parts.add(new Grounds.BoxPart(name, part.layer(), rings));
                        }));
        return new Grounds.BoxView(
                box.id(),
                box.box().works().name(),
                parts,
                box.mounts().entrySet().stream()
                        .map(mount -> new Grounds.BoxPoint(mount.getKey(), Pair.of(mount.getValue())))
                        .toList(),
                box.box().lever().part(),
                Pair.of(box.pivot()),
                Pair.of(box.press()));
    }

    /** What would come of a plan; nothing is written. */
    public String attemptJson(String plan) {
        return Json.compact(maker.attempt(Requests.read(plan, BringPlan.class)));
    }

    /**
     * Makes a design of a plan.
     *
     * @throws BringException when it cannot be; nothing is written then
     */
    public String makeJson(String plan) {
        return Json.compact(new Starts.Made(maker.make(Requests.read(plan, BringPlan.class))));
    }

    /** A design's drawing, drawn again, held against what it was; {@code scale} 0 when it is not known. */
    public String redrawnJson(String id, String file, byte[] bytes, double scale) {
        return Json.compact(redraw.read(id, file, bytes, scale));
    }

    /** Takes a redrawn drawing into its design; one step that can be taken back. */
    public String redrawJson(String id, String plan) {
        redraw.accept(id, Requests.read(plan, Redrawn.Redraw.class));
        return Json.compact(new Starts.Made(id));
    }

    /** Designs and bare boards to begin from. */
    public String startsJson() {
        List<Starts.Start> starts = new ArrayList<>();
        BareStarts.ALL.forEach(bare -> starts.add(new Starts.Start(BARE + bare.id(), bare.name(), bare.words())));
        List<String> own = designs(workbench.folder());
        own.forEach(id -> add(starts, OWN + id, workbench.folder().resolve(id)));
        demo().forEach(id -> {
            if (!own.contains(id)) {
                add(starts, DEMO + id, demoFolder().resolve(id));
            }
        });
        return Json.compact(new Starts(starts));
    }

    private static void add(List<Starts.Start> starts, String id, Path folder) {
        try {
            Design design = DesignReader.read(folder);
            starts.add(new Starts.Start(id, design.name(), ""));
        } catch (DesignException e) {
            // It says what is wrong with it when it is opened; nobody begins from it.
        }
    }

    /** A small picture of a start. */
    public String pictureSvg(String id) {
        return DesignPicture.svg(DesignReader.read(folder(id)));
    }

    /** Begins a design. */
    public String beginJson(String body) {
        Starts.Begin begin = Requests.read(body, Starts.Begin.class);
        if (begin.from().startsWith(BARE)) {
            BareStarts.Bare bare =
                    BareStarts.find(begin.from().substring(BARE.length())).orElseThrow(() -> unknown(begin.from()));
            WorkshopFile workshop = WorkshopReader.read(workbench.folder());
            return Json.compact(
                    new Starts.Made(maker.make(BareStarts.plan(bare, begin.name(), begin.box(), workshop))));
        }
        String name = BringNames.folder(begin.name());
        Path folder = folder(begin.from());
        Path workshop = begin.from().startsWith(OWN) ? workbench.folder() : demoFolder();
        try {
            String example = workshop.relativize(folder).toString().replace('\\', '/');
            NewDesign.make(
                    workshop, workbench.folder(), name, begin.name(), example, made -> BringMaker.tryWhole(name, made));
            return Json.compact(new Starts.Made(name));
        } catch (FileAlreadyExistsException e) {
            throw new BringException(
                    "there is something called \"" + name + "\" in the workshop already", "Choose another name.");
        } catch (IOException e) {
            throw new BringException(
                    "the workshop's folder cannot be written to (" + e.getMessage() + ")", "Nothing was changed.");
        }
    }

    private Path folder(String id) {
        if (id.startsWith(OWN) && designs(workbench.folder()).contains(id.substring(OWN.length()))) {
            return workbench.folder().resolve(id.substring(OWN.length()));
        }
        if (id.startsWith(DEMO) && demo().contains(id.substring(DEMO.length()))) {
            return demoFolder().resolve(id.substring(DEMO.length()));
        }
        throw unknown(id);
    }

    private UnknownDesignException unknown(String id) {
        return new UnknownDesignException(id, designs(workbench.folder()));
    }

    private static List<String> designs(Path workshop) {
        try {
            return DesignFolders.list(workshop);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The demo's designs, less those that show a failure; none where Jackwork came without a demo. */
    private static List<String> demo() {
        try {
            return designs(Demo.original()).stream()
                    .filter(id -> !id.contains("/"))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Path demoFolder() {
        try {
            return Demo.original();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
