package jackwork.app.bench;

import jackwork.app.core.BuildsJob;
import jackwork.app.core.Jobs;
import jackwork.app.core.OwnCores;
import jackwork.app.core.TakenIn;
import jackwork.app.core.Trials;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.app.wire.Requests;
import jackwork.app.wire.SavedException;
import jackwork.app.wire.Zip;
import jackwork.bench.Archive;
import jackwork.bench.BenchException;
import jackwork.bench.Kinds;
import jackwork.bench.LogKind;
import jackwork.bench.Revision;
import jackwork.bench.RevisionName;
import jackwork.builds.BuildRun;
import jackwork.design.Design;
import jackwork.design.DesignFolders;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** The bench on the page: what the log says, what is put into it, what is taken out. */
public final class BenchDesk {

    private static final int MOST_BUILDS = 20_000;

    private final Workbench workbench;
    private final Jobs jobs;
    private final PhoneDesk phone;

    public BenchDesk(Workbench workbench, Jobs jobs, PhoneDesk phone) {
        this.workbench = workbench;
        this.jobs = jobs;
        this.phone = phone;
    }

    private Bench bench() {
        return Bench.in(workbench.folder());
    }

    private interface Reading<T> {
        T of() throws IOException;
    }

    private static <T> T reading(Reading<T> reading) {
        try {
            return reading.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @param design empty for all
     * @param rate to be proved
     * @param confidence wanted
     */
    public String viewJson(String design, double rate, double confidence) {
        if (!(rate >= 0.5 && rate <= 0.9999 && confidence >= 0.5 && confidence <= 0.9999)) {
            throw new BadRequestException("read a rate of " + rate + " and a confidence of " + confidence
                    + ", expected both from 0.5 to 0.9999");
        }
        BenchViewMaker maker = new BenchViewMaker(bench(), new BenchReport.Wish(rate, confidence));
        return reading(() -> Json.compact(maker.of(design, workbench.names())));
    }

    public String pulseJson() {
        return Json.compact(new BenchPulse(bench().log().state(), phone.view()));
    }

    /** @param body a {@link ForFreezing} */
    public String freezeJson(String body) {
        ForFreezing request = Requests.read(body, ForFreezing.class);
        workbench.design(request.design());
        Path folder = workbench.folder().resolve(request.design());
        try {
            Revision made = reading(() -> bench().freeze(folder, request.note(), Instant.now()));
            return Json.compact(new BenchView.Since(made.name().number(), List.of()));
        } catch (IllegalArgumentException e) {
            throw new BadRequestException(String.valueOf(e.getMessage()));
        }
    }

    /** @param body a {@link ForLogging} */
    public String logJson(String body) {
        return Json.compact(entries().log(Requests.read(body, ForLogging.class)));
    }

    private DeskLog entries() {
        return new DeskLog(bench(), workbench::design);
    }

    private Measuring measuring() {
        return new Measuring(bench(), entries(), new Trials(workbench));
    }

    /** @param body a {@link ForMeasured} */
    public String measuredJson(String body) {
        return Json.compact(measuring().look(Requests.read(body, ForMeasured.class)));
    }

    /** @param wanted names of measured values; all that has readings enough when empty */
    public String useJson(List<String> wanted) {
        UseView view = reading(() -> measuring().use(wanted, DesignFolders.list(workbench.folder())));
        return Json.compact(view);
    }

    public String effectJson(List<String> wanted, String design) {
        workbench.design(design);
        return Json.compact(OwnCores.use(workbench.longest(), () -> measuring().on(wanted, design)));
    }

    /** @param body a {@link ForUse} */
    public String applyJson(String body) {
        measuring().apply(Requests.read(body, ForUse.class));
        try {
            return pulseJson();
        } catch (RuntimeException e) {
            throw new SavedException(e);
        }
    }

    /** @param after 0 for the design as it stands */
    public String pairJson(String design, int before, int after) {
        Bench bench = bench();
        RevisionName then = named(design, before);
        RevisionPair pair = OwnCores.use(
                workbench.longest(),
                () -> reading(() -> bench.frozen(
                        then,
                        old -> beside(
                                bench,
                                design,
                                after,
                                now -> RevisionPair.of(design, before, after, old, now, bench.compare(then, after))))));
        return Json.compact(pair);
    }

    /**
     * One of two states of a design.
     *
     * @param former whether it is the one before that is drawn
     */
    public String pictureSvg(String design, int before, int after, boolean former) {
        Bench bench = bench();
        return reading(() -> bench.frozen(
                named(design, before),
                old -> beside(
                        bench,
                        design,
                        after,
                        now -> former ? RevisionPicture.svg(old, now, true) : RevisionPicture.svg(now, old, false))));
    }

    private static RevisionName named(String design, int number) {
        try {
            return new RevisionName(design, number);
        } catch (IllegalArgumentException e) {
            throw new BadRequestException(String.valueOf(e.getMessage()));
        }
    }

    private <T> T beside(Bench bench, String design, int number, Function<Design, T> look) {
        return number == 0
                ? look.apply(workbench.design(design))
                : reading(() -> bench.frozen(named(design, number), look));
    }

    public String usualTimesJson(String design) {
        return Json.compact(UsualTimes.of(workbench.design(design)));
    }

    /** @param body a {@link ForPrediction} */
    public String predictJson(String body) {
        ForPrediction request = Requests.read(body, ForPrediction.class);
        if (request.builds() < 10 || request.builds() > MOST_BUILDS) {
            throw new BadRequestException("read " + request.builds() + " builds, expected 10 to " + MOST_BUILDS);
        }
        Bench bench = bench();
        RevisionName name = named(request.design(), request.revision());
        BuildRun run = OwnCores.use(
                workbench.longest(), () -> reading(() -> bench.builds(name, request.builds(), request.seed())));
        return jobs.begin(new BuildsJob(name.design(), "", run, report -> bench.keep(name, report, Instant.now())));
    }

    /** Entries of a kind that count. */
    public String csv(String kind) {
        LogKind<?> named = Kinds.named(kind)
                .orElseThrow(() -> new BadRequestException(
                        "read the kind \"" + kind + "\", expected one of " + String.join(", ", Kinds.names())));
        return Archive.csv(bench().log(), named);
    }

    /**
     * Takes over a CSV file, all of it or nothing.
     *
     * @param file its name, which says the kind: a browser's {@code trials (1).csv} is one of trials as well
     */
    public String importJson(String file, byte[] bytes) {
        String kind = file.replaceFirst("(?i)( ?\\(\\d+\\))?\\.csv$", "");
        if (Kinds.named(kind).isEmpty()) {
            throw new BenchException("the file is called \"" + file + "\", expected the name of its kind: "
                    + String.join(".csv, ", Kinds.names()) + ".csv");
        }
        return reading(() -> {
            Path folder = Files.createTempDirectory("jackwork-csv");
            Path copy = folder.resolve(kind + ".csv");
            try {
                Files.write(copy, bytes);
                Archive.Taken taken = Archive.read(bench().log(), copy);
                return Json.compact(new TakenIn(taken.added(), taken.already()));
            } finally {
                Files.deleteIfExists(copy);
                Files.delete(folder);
            }
        });
    }

    /** A revision's own files, a workshop of its own, as a ZIP file: for spare parts, or to be packed again. */
    public byte[] filesZip(String design, int number) {
        SortedMap<String, byte[]> files = bench().log().files(named(design, number));
        return reading(() -> {
            SortedMap<String, Zip.Content> contents = new TreeMap<>();
            files.forEach((name, bytes) -> contents.put(name, out -> out.write(bytes)));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Zip.write(contents, out);
            return out.toByteArray();
        });
    }
}
