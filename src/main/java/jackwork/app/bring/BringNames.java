package jackwork.app.bring;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Names that a maker types, made safe: for files and folders, and for parts and points. */
final class BringNames {

    /** As a sentence would have it; no slashes, no dots at the beginning, nothing that leaves the workshop's folder. */
    private static final Pattern TITLE = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ,'_-]{0,60}");

    private static final Pattern PART = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    private static final int LONGEST_FOLDER = 40;

    /** Devices that one system takes these for, whatever stands behind them. */
    private static final Set<String> DEVICES = Set.of(
            "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8", "com9", "lpt1",
            "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9");

    private BringNames() {}

    /**
     * The folder for a design of that name.
     *
     * @throws BringException when the name is none
     */
    static String folder(String title) {
        if (!TITLE.matcher(title).matches()) {
            throw new BringException(
                    "the name reads \"" + title + "\"", "Name it in letters, digits, spaces and hyphens, at most 61.");
        }
        String plain = Normalizer.normalize(title, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
        String folder = plain.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-+|-+$", "");
        folder = folder.substring(0, Math.min(LONGEST_FOLDER, folder.length())).replaceAll("-+$", "");
        if (folder.isEmpty() || DEVICES.contains(folder)) {
            throw new BringException(
                    "the name reads \"" + title + "\", which cannot be a folder's everywhere", "Choose another name.");
        }
        return folder;
    }

    /** Whether a part or a point may be called so: in files, drawings and joints. */
    static boolean isPlain(String name) {
        return PART.matcher(name).matches()
                && !name.equals(BringPlan.STANDS)
                && !name.equals("origin")
                && !name.startsWith("engrave-");
    }
}
