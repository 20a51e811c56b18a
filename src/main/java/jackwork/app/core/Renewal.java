package jackwork.app.core;

import jackwork.app.history.Renewals;
import jackwork.app.history.Turn;
import jackwork.app.wire.Json;
import jackwork.app.wire.Requests;
import jackwork.app.wire.StaleException;
import jackwork.app.wire.VersionView;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.OldFiles;
import jackwork.design.RenewedText;
import jackwork.design.WorkshopReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A workshop whose files are of an earlier format, made one of today's by one step that can be taken back. What the step
 * would do is told before anything is written, in the words in which it is told afterwards.
 */
public final class Renewal {

    private final Path workshop;
    private final Renewals kept;

    /** @param workshop the folder with {@code workshop.yaml} */
    public Renewal(Path workshop) {
        this.workshop = workshop.toAbsolutePath().normalize();
        this.kept = new Renewals(this.workshop);
    }

    /**
     * What a step would do, or did.
     *
     * @param files names of those that change, from the workshop
     * @param lost what is not carried over, a line each
     */
    public record Told(List<String> files, List<String> lost) {

        public boolean isNothing() {
            return files.isEmpty();
        }
    }

    /** Texts as they are and as they would be, by file. */
    private record Plan(String version, Map<OldFiles.Old, String> texts, List<String> lost) {

        Told told() {
            return new Told(texts.keySet().stream().map(OldFiles.Old::name).toList(), lost);
        }
    }

    /**
     * What would change. Nothing is written.
     *
     * @throws DesignException when {@code workshop.yaml} is of a newer format, or of none
     */
    public Told look() {
        return plan().told();
    }

    /**
     * Makes the step; one that was broken off is made to its end.
     *
     * @throws DesignException as {@link #look}, and when something else lies where it is kept
     * @throws UncheckedIOException when a file cannot be written; all are as they were then
     */
    public Told renew() throws IOException {
        return renew(null);
    }

    private Told renew(@Nullable String version) throws IOException {
        List<Renewals.Changed> ended = end();
        Plan plan = plan();
        if (version != null && ended.isEmpty() && !version.equals(plan.version())) {
            throw new StaleException();
        }
        if (plan.texts().isEmpty()) {
            return ended.isEmpty()
                    ? plan.told()
                    : new Told(
                            ended.stream().map(Renewals.Changed::name).toList(),
                            kept.last().map(Renewals.Step::told).orElse(List.of()));
        }
        List<Renewals.Changed> files = new ArrayList<>();
        plan.texts()
                .forEach((old, text) ->
                        files.add(new Renewals.Changed(old.file(), old.name(), bytes(old.text()), bytes(text))));
        Turn.take(workshop, () -> {
            if (!version(OldFiles.in(workshop)).equals(plan.version())) {
                throw new StaleException();
            }
            Renewals.Step step = kept.keep(files, plan.lost());
            try {
                kept.make(step);
            } catch (UncheckedIOException | DesignException e) {
                if (!step.isMade()) {
                    kept.drop(step);
                }
                throw e;
            }
        });
        return plan.told();
    }

    /** Brings a step to its end that a killed program began. */
    private List<Renewals.Changed> end() {
        List<Renewals.Changed> ended = new ArrayList<>();
        if (kept.last().filter(Renewals.Step::isBrokenOff).isPresent()) {
            Turn.take(
                    workshop,
                    () -> kept.last().filter(Renewals.Step::isBrokenOff).ifPresent(step -> {
                        kept.make(step);
                        ended.addAll(step.files());
                    }));
        }
        return ended;
    }

    /**
     * Takes the last step back, byte for byte.
     *
     * @return names of its files; empty when there is nothing to take back
     * @throws DesignException naming files that were changed since; nothing is changed then
     */
    public List<String> takeBack() {
        List<String> names = new ArrayList<>();
        if (kept.isThere()) {
            Turn.take(
                    workshop,
                    () -> kept.last().ifPresent(step -> {
                        step.files().forEach(file -> names.add(file.name()));
                        kept.takeBack(step);
                    }));
        }
        return names;
    }

    /** For the page: a {@link RenewalView}. */
    public String viewJson() {
        return Json.compact(view());
    }

    private RenewalView view() {
        Plan plan = plan();
        Optional<Renewals.Step> step = kept.last();
        return new RenewalView(
                plan.version(),
                plan.told().files(),
                plan.lost(),
                step.map(made -> made.files().stream()
                                .map(Renewals.Changed::name)
                                .toList())
                        .orElse(null),
                step.map(Renewals.Step::told).orElse(List.of()));
    }

    /**
     * The same step from the page.
     *
     * @param body a {@link VersionView}: of what was looked at
     * @throws StaleException when the files have changed since
     */
    public String renewJson(String body) throws IOException {
        renew(Requests.read(body, VersionView.class).version());
        return viewJson();
    }

    /** The step taken back from the page. */
    public String takeBackJson() {
        takeBack();
        return viewJson();
    }

    private Plan plan() {
        try {
            OldFiles old = OldFiles.in(workshop);
            List<NotCarried.Line> lines = new ArrayList<>();
            NotCarried lost = new NotCarried(workshop);
            Map<OldFiles.Old, String> texts = texts(old, lost, lines);
            if (!texts.isEmpty()) {
                lines.addAll(lost.ofDesigns(OldFiles.byName(texts)));
            }
            return new Plan(version(old), texts, NotCarried.words(lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** It is another when one of the files says something else. */
    private static String version(OldFiles old) {
        return DesignFiles.nameOf(old.files().stream()
                .map(file -> file.name() + "\n" + file.text())
                .collect(Collectors.joining("\n")));
    }

    private static Map<OldFiles.Old, String> texts(OldFiles old, NotCarried lost, List<NotCarried.Line> lines) {
        old.left().forEach(problem -> lines.add(NotCarried.left(problem)));
        Map<OldFiles.Old, String> texts = new LinkedHashMap<>();
        for (OldFiles.Old file : old.files()) {
            try {
                RenewedText renewed = RenewedText.of(file.kind(), file.name(), file.text());
                texts.put(file, renewed.text());
                renewed.gone().forEach(gone -> lines.add(lost.gone(file, gone)));
            } catch (DesignException e) {
                e.problems().forEach(problem -> lines.add(NotCarried.left(problem)));
            }
        }
        return texts;
    }

    /**
     * Texts of a workshop's old files as they would be, by absolute path: for looking at what stays as it is, as a frozen
     * revision does.
     */
    public static Map<Path, String> renewedTexts(Path workshop) throws IOException {
        return OldFiles.byName(texts(OldFiles.in(workshop), new NotCarried(workshop), new ArrayList<>()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** The workshop that a folder is of: one whose file was put aside to take a step back is one as well. */
    public static Optional<Path> workshopOf(Path folder) {
        Path here = folder.toAbsolutePath().normalize();
        return WorkshopReader.folderOf(here)
                .or(() -> new Renewals(here).isThere() ? Optional.of(here) : Optional.empty());
    }
}
