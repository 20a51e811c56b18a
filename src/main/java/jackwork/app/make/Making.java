package jackwork.app.make;

import jackwork.app.core.DesignCheck;
import jackwork.app.core.Jobs;
import jackwork.app.core.Once;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.app.wire.Requests;
import jackwork.design.Design;
import jackwork.drawing.BookletSvg;
import jackwork.drawing.BookletWriter;
import jackwork.drawing.Paper;
import jackwork.drawing.PdfPictures;
import jackwork.geometry.Wanted;
import jackwork.make.Makings;
import jackwork.make.Pack;
import jackwork.make.PaperFile;
import jackwork.make.SheetSearch;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Can I make it? All that is made of a design, shown and packed; what was worked out last is kept. */
public final class Making implements AutoCloseable {

    /** The command line makes more. */
    static final int MOST_PIECES = 100;
    /** So many are laid out while the page waits; more are long work. */
    private static final int AT_ONCE = 3;

    private static final double LONGEST_SEARCH = 3600;

    private final Workbench workbench;
    private final Jobs jobs;
    private final PackShelf shelf = new PackShelf();
    /** The last one is what the page looks at; another may be asked for beside it. */
    private final Once<Key, Made> made;
    /** None is kept here: the tightest is. */
    private final Once<Batch, Laid> lays;

    private Optional<Laid> laid = Optional.empty();

    /** A state of a design, cut from certain sheets. */
    private record Key(String id, String version, Map<String, Double> measured) {}

    private record Batch(Key key, int quantity) {}

    /**
     * @param saved as the files have it, whatever was measured since
     * @param views as told to the page, by paper
     * @param pdfs by kind and paper
     */
    private record Made(
            Key key, Design saved, Makings makings, Map<String, String> views, Map<String, Optional<byte[]>> pdfs) {

        Made(Key key, Design saved, Makings makings) {
            this(key, saved, makings, new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
        }
    }

    /** @param seconds that it took */
    record Laid(String version, Map<String, Double> measured, Pack pack, double seconds) {}

    public Making(Workbench workbench, Jobs jobs) {
        this.workbench = workbench;
        this.jobs = jobs;
        this.made = new Once<>(2, workbench.longest());
        this.lays = new Once<>(0, workbench.longest());
    }

    /** @param of a {@link ForMaking}, as in all that follow */
    public String viewJson(String id, String of) {
        ForMaking wanted = wanted(of);
        Made found = made(id, wanted);
        Makings makings = found.makings();
        Paper paper = paper(makings, wanted);
        // Worked out, where it is not yet, before anything is held.
        DesignCheck check = workbench.shown(id).check();
        return found.views()
                .computeIfAbsent(
                        paper.name(),
                        name -> Json.compact(MakeViewMaker.of(
                                id,
                                found.key().version(),
                                makings,
                                check,
                                paper,
                                MakeViewMaker.stocks(
                                        makings.stocks(), found.saved().workshop(), wanted.measured()))));
    }

    /** The sheets, where they are laid out already or quickly are. */
    public String sheetsJson(String id, String of) {
        ForMaking wanted = wanted(of);
        Made found = made(id, wanted);
        Optional<Laid> ready = wanted.quantity() <= AT_ONCE
                ? Optional.of(laidAtOnce(found, wanted.quantity()))
                : kept(found.key(), wanted.quantity());
        return Json.compact(MakeViewMaker.sheets(found.key().version(), wanted.quantity(), ready));
    }

    public String solidsJson(String id, String of) {
        return Json.compact(MakeViewMaker.solids(made(id, wanted(of)).makings()));
    }

    public String papersJson(String id, String of) {
        ForMaking wanted = wanted(of);
        Made found = made(id, wanted);
        return Json.compact(MakeViewMaker.papers(
                found.makings(), kind -> pdf(found, kind, paper(found.makings(), wanted))));
    }

    /** A page of what is printed on paper, as PNG. */
    public byte[] pagePng(String id, String of, String kind, int page, int width) {
        ForMaking wanted = wanted(of);
        Made found = made(id, wanted);
        PaperFile file = Arrays.stream(PaperFile.values())
                .filter(one -> Json.word(one).equals(kind))
                .findFirst()
                .orElseThrow(
                        () -> new BadRequestException("read \"" + kind + "\", expected artwork, cloth, label or jigs"));
        byte[] pdf = pdf(found, file, paper(found.makings(), wanted))
                .orElseThrow(() -> new BadRequestException("this design has no " + file.file()));
        if (page < 0 || page >= PdfPictures.sizes(pdf).size() || width < 16 || width > PdfPictures.MOST) {
            throw new BadRequestException("read page " + page + ", " + width + " px wide; expected a page of "
                    + file.file() + ", 16 to " + PdfPictures.MOST + " px");
        }
        return PdfPictures.png(pdf, page, width);
    }

    /** The picture of a step of the glue-up, as SVG. */
    public String stepSvg(String id, String of, int number) {
        var steps = made(id, wanted(of)).makings().steps();
        BookletWriter.Picture picture =
                number < 0 || number >= steps.size() ? null : steps.get(number).picture();
        if (picture == null) {
            throw new BadRequestException("read step " + number + ", expected one that has a picture");
        }
        return BookletSvg.write(picture);
    }

    /** @param body a {@link ForSheets} */
    public String layJson(String id, String body) {
        ForSheets wanted = Requests.read(body, ForSheets.class);
        check(wanted.making());
        if (wanted.seconds() != 0 && !(wanted.seconds() >= 1 && wanted.seconds() <= LONGEST_SEARCH)) {
            throw new BadRequestException("read " + wanted.seconds() + " seconds, expected 1 to 3600, or 0");
        }
        return jobs.begin(
                new SheetsJob(this, id, made(id, wanted.making()).key().version(), wanted));
    }

    /** @param body a {@link ForMaking} */
    public String packJson(String id, String body) {
        ForMaking wanted = wanted(body);
        Made found = made(id, wanted);
        Paper paper = paper(found.makings(), wanted);
        return jobs.begin(new PackJob(this, shelf, id, found.key().version(), wanted, paper));
    }

    /** The pack that a piece of work has made, until the next one is made. */
    public PackShelf.Fetched packed(int number) throws IOException {
        return shelf.fetch(number);
    }

    @Override
    public void close() {
        shelf.close();
    }

    private static ForMaking wanted(String json) {
        ForMaking wanted = Requests.read(json, ForMaking.class);
        check(wanted);
        return wanted;
    }

    private static void check(ForMaking wanted) {
        if (wanted.quantity() < 1 || wanted.quantity() > MOST_PIECES) {
            throw new BadRequestException("read " + wanted.quantity() + " pieces, expected 1 to " + MOST_PIECES
                    + "; more with: jackwork pack DESIGN --quantity N");
        }
    }

    private static Paper paper(Makings makings, ForMaking wanted) {
        return wanted.paper().isEmpty()
                ? makings.workshop().paperOrUsual()
                : Paper.named(wanted.paper())
                        .orElseThrow(() -> new BadRequestException(
                                "read the paper \"" + wanted.paper() + "\", expected " + Paper.NAMES));
    }

    private Made made(String id, ForMaking wanted) {
        Design saved = workbench.design(id);
        Design design = saved.withMeasured(wanted.measured());
        Key key = new Key(id, saved.version(), wanted.measured());
        return made.of(key, () -> new Made(key, saved, Makings.of(design)));
    }

    /** While the page waits. */
    private Laid laidAtOnce(Made found, int quantity) {
        return kept(found.key(), quantity)
                .orElseGet(() ->
                        keep(lays.of(new Batch(found.key(), quantity), () -> layOut(found, quantity, whileWanted()))));
    }

    private static SheetSearch whileWanted() {
        Thread worker = Thread.currentThread();
        return new SheetSearch(0, worker::isInterrupted, words -> {});
    }

    private static Optional<byte[]> pdf(Made found, PaperFile kind, Paper paper) {
        return found.pdfs().computeIfAbsent(kind + " " + paper.name(), key -> {
            try {
                return kind.pdf(found.makings(), paper);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private synchronized Optional<Laid> kept(Key key, int quantity) {
        return laid.filter(last -> last.version().equals(key.version())
                && last.measured().equals(key.measured())
                && last.pack().quantity() == quantity);
    }

    private synchronized Laid keep(Laid next) {
        laid = Optional.of(next);
        return next;
    }

    private synchronized Laid keepTighter(Key key, Laid next) {
        return kept(key, next.pack().quantity())
                .filter(last -> !next.pack().isTighterThan(last.pack()))
                .orElseGet(() -> keep(next));
    }

    /** The sheets kept of this state; else they are laid out. */
    Laid laid(String id, ForMaking wanted, SheetSearch search) {
        Made found = made(id, wanted);
        return kept(found.key(), wanted.quantity()).orElseGet(() -> keep(layOut(found, wanted.quantity(), search)));
    }

    /** Looks for tighter sheets, and keeps what is tighter. */
    Laid tightened(String id, ForMaking wanted, SheetSearch search) {
        Made found = made(id, wanted);
        Laid next = layOut(found, wanted.quantity(), search);
        return keepTighter(found.key(), next);
    }

    private static Laid layOut(Made found, int quantity, SheetSearch search) {
        long began = System.nanoTime();
        Pack pack = Pack.of(found.makings(), quantity, search);
        // What a search has that was stopped is not to be kept.
        Wanted.goOn();
        return new Laid(found.key().version(), found.key().measured(), pack, (System.nanoTime() - began) / 1e9);
    }
}
