package jackwork.app.core;

import jackwork.DemoCopy;
import jackwork.app.history.History;
import jackwork.app.history.HistoryFolder;
import jackwork.app.history.KeptTexts;
import jackwork.app.history.Turn;
import jackwork.design.DesignException;
import jackwork.design.DesignFiles;
import jackwork.design.WorkshopReader;
import jackwork.fuzz.Reading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The list of steps that came with a workshop: looked at, taken back and made again as the page does. The input's first line
 * says what it stands for: the {@code # workshop}'s own list, a {@code # text} kept under the name of another, a
 * {@code # link} in the place it names; the heron's list where it says nothing. In a list {@code {mine}} and {@code
 * {theirs}} stand for names of kept texts, {@code {design}} and {@code {figure}} for those of the files as they are, and
 * {@code {outside}} for the folder that the workshop lies in.
 *
 * <p>Whatever it says: nothing outside the workshop differs afterwards, by content, and in it nothing but the files that a
 * change made here may touch.
 */
public final class HistoryReading extends Reading {

    private static final HistoryReading READING = new HistoryReading();
    private static final Pattern NAMES = Pattern.compile("\\.jackwork|\\.yaml|\\.svg");
    private static final Pattern FIRST = Pattern.compile("\\A# (workshop|text|link)([^\\n]{0,80})\\n");
    private static final String MINE = "# mine\n";
    private static final String THEIRS = "# theirs\n";

    private final Path root = folder("history");
    private final Path hut = root.resolve("hut");
    private final Path kept = hut.resolve(".jackwork");
    private final Set<Path> ofDesign;
    private final Set<Path> ofWorkshop;
    private final Map<Path, byte[]> whole = new LinkedHashMap<>();
    private final Map<Path, String> canary;

    private HistoryReading() {
        try {
            DemoCopy.with(hut, "heron");
            for (String name : new String[] {".profile", "letters.txt", "other/design.yaml", "other/steps.jsonl"}) {
                Path file = root.resolve(name);
                Files.createDirectories(file.getParent());
                Files.writeString(file, MINE);
            }
            Files.writeString(hut.resolve("notes.yaml"), MINE);
            ofDesign = DesignFiles.changeable(hut.resolve("heron")).orElseThrow();
            ofWorkshop = new LinkedHashSet<>(Set.of(hut.resolve(WorkshopReader.FILE)));
            for (Path file : ofDesign) {
                whole.put(file, Files.readAllBytes(file));
            }
            for (Path file : ofWorkshop) {
                whole.put(file, Files.readAllBytes(file));
            }
            canary = untouchable();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asked by the fuzzer before its clock runs: at first use every class is made fit to be watched, which takes a while. */
    public static void fuzzerInitialize() {
        READING.once(new byte[0]);
    }

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    /** All below the root with what is in it, but what a change may touch and what the program keeps. */
    private Map<Path, String> untouchable() throws IOException {
        Map<Path, String> state = state(root);
        state.keySet().removeIf(file -> ofProgram(file) || whole.containsKey(file));
        for (Map.Entry<Path, String> file : state.entrySet()) {
            boolean near =
                    !file.getKey().startsWith(hut) || file.getKey().getParent().equals(hut);
            if (near && Files.isRegularFile(file.getKey(), LinkOption.NOFOLLOW_LINKS)) {
                file.setValue(DesignFiles.nameOf(Files.readString(file.getKey(), StandardCharsets.ISO_8859_1)));
            }
        }
        return state;
    }

    /** What it keeps, where it keeps it or put aside. */
    private boolean ofProgram(Path file) {
        return file.startsWith(hut)
                && !file.equals(hut)
                && hut.relativize(file).getName(0).toString().startsWith(".jackwork");
    }

    @Override
    protected void read(byte[] input) throws IOException {
        Matcher first = FIRST.matcher(new String(input, 0, Math.min(input.length, 120), StandardCharsets.ISO_8859_1));
        String role = first.find() ? first.group(1) : "";
        byte[] rest = role.isEmpty() ? input : java.util.Arrays.copyOfRange(input, first.end(), input.length);
        boolean workshop = role.equals("workshop");
        Path folder = kept.resolve("history").resolve(workshop ? "~workshop" : "heron");
        Files.createDirectories(folder);
        try {
            for (String text : new String[] {MINE, THEIRS}) {
                Files.writeString(folder.resolve(DesignFiles.nameOf(text) + ".yaml"), text);
            }
            for (byte[] bytes : whole.values()) {
                String name = DesignFiles.nameOf(new String(bytes, StandardCharsets.UTF_8));
                Files.write(folder.resolve(name + ".yaml"), bytes);
            }
            switch (role) {
                case "text" -> {
                    Files.write(folder.resolve(DesignFiles.nameOf(MINE) + ".yaml"), rest);
                    Files.write(folder.resolve("steps.jsonl"), filled(usual().getBytes(StandardCharsets.UTF_8)));
                }
                case "link" -> {
                    Files.write(folder.resolve("steps.jsonl"), filled(rest));
                    link(first.group(2).strip());
                }
                default -> Files.write(folder.resolve("steps.jsonl"), filled(rest));
            }
            use(workshop);
        } finally {
            try {
                requireUntouched();
            } finally {
                clear();
            }
        }
    }

    private static String usual() {
        return "{\"what\":\"did\",\"label\":\"x\",\"before\":{\"heron/figure.yaml\":\"{mine}\"},"
                + "\"after\":{\"heron/figure.yaml\":\"{figure}\"}}\n";
    }

    /** One of the places that the program writes to is a link out. */
    private void link(String place) throws IOException {
        for (String known : new String[] {
            "",
            "history",
            "history/heron",
            "history/heron/steps.jsonl",
            "turn",
            "history/heron/" + DesignFiles.nameOf(MINE) + ".yaml"
        }) {
            if (known.equals(place)) {
                Path at = kept.resolve(known);
                if (Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
                    delete(at);
                }
                boolean file = known.contains(".") || known.equals("turn");
                Files.createSymbolicLink(at, root.resolve(file ? ".profile" : "other"));
            }
        }
    }

    private byte[] filled(byte[] list) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        String text = new String(list, StandardCharsets.ISO_8859_1)
                .replace("{mine}", DesignFiles.nameOf(MINE))
                .replace("{theirs}", DesignFiles.nameOf(THEIRS))
                .replace("{design}", name("heron/design.yaml"))
                .replace("{figure}", name("heron/figure.yaml"))
                .replace("{workshop}", name(WorkshopReader.FILE))
                .replace("{outside}", root.toString());
        out.writeBytes(text.getBytes(StandardCharsets.ISO_8859_1));
        return out.toByteArray();
    }

    private String name(String file) {
        return DesignFiles.nameOf(new String(whole.get(hut.resolve(file)), StandardCharsets.UTF_8));
    }

    /** As the page: looks, takes back, makes again, changes something, takes back. */
    private void use(boolean workshop) throws IOException {
        Set<Path> files = workshop ? ofWorkshop : ofDesign;
        History history = new History(
                hut,
                workshop ? HistoryFolder.ofWorkshop(hut) : HistoryFolder.ofDesign(hut, "heron", java.util.List::of),
                () -> Optional.of(files));
        history.finish();
        history.see(texts(files));
        history.undo().ifPresent(move -> write(history, move));
        history.see(texts(files));
        history.redo().ifPresent(move -> write(history, move));
        Map<Path, String> before = texts(files);
        Map<Path, String> after = new LinkedHashMap<>();
        before.forEach((file, text) -> after.put(file, text + "\n"));
        Turn.take(hut, () -> {
            history.did("x", before, after);
            history.write(before, after);
        });
        history.undo().ifPresent(move -> write(history, move));
        history.told().ifPresent(told -> {
            if (!told.contains("put aside") && !told.contains("could not be moved")) {
                throw new AssertionError("put aside without a word where it is: " + told);
            }
        });
    }

    private static Map<Path, String> texts(Set<Path> files) {
        Map<Path, String> texts = new LinkedHashMap<>();
        files.forEach(file -> texts.put(file, KeptTexts.read(file)));
        return texts;
    }

    private void write(History history, History.Move move) {
        Turn.take(hut, () -> {
            history.write(texts(move.texts().keySet()), move.texts());
            history.moved(move);
        });
    }

    private void requireUntouched() throws IOException {
        Map<Path, String> now = untouchable();
        if (!now.equals(canary)) {
            now.entrySet().removeAll(canary.entrySet());
            throw new AssertionError("something was changed that is none of it: " + now.keySet());
        }
    }

    private void clear() throws IOException {
        try (var all = Files.list(hut)) {
            for (Path file : all.filter(this::ofProgram).toList()) {
                delete(file);
            }
        }
        for (Map.Entry<Path, byte[]> file : whole.entrySet()) {
            if (!java.util.Arrays.equals(Files.readAllBytes(file.getKey()), file.getValue())) {
                Files.write(file.getKey(), file.getValue());
            }
        }
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        if (thrown instanceof UncheckedIOException unchecked) {
            // As the server tells it.
            return String.valueOf(unchecked.getCause().getMessage());
        }
        return thrown instanceof DesignException ? thrown.getMessage() : null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}
