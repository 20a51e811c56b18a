package jackwork.design;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** The known word that a misspelt one most likely meant. */
public final class NearestWord {

    private NearestWord() {}

    /** {@code ; did you mean "parts"?}, or the words to choose from when none is near. */
    public static String hint(String read, Collection<String> known) {
        return known.stream()
                .filter(word -> isNear(read, word))
                .min(Comparator.comparingInt((String word) -> distance(read, word))
                        .thenComparing(word -> word))
                .map(word -> "; did you mean \"" + word + "\"?")
                .orElseGet(() -> known.isEmpty() ? "" : "; known are " + list(known));
    }

    /** What is far longer or shorter is no slip, and its table would be as large as both together. */
    private static boolean isNear(String read, String word) {
        return Math.abs(read.length() - word.length()) <= bound(word) && distance(read, word) <= bound(word);
    }

    /** How many slips a word may hold and still be meant. */
    private static int bound(String word) {
        return word.length() < 4 ? 1 : word.length() < 8 ? 2 : 3;
    }

    private static String list(Collection<String> known) {
        int most = 12;
        String words = String.join(", ", known.stream().limit(most).toList());
        return known.size() > most ? words + ", …" : words;
    }

    /** Optimal string alignment distance: insertions, deletions, changes and neighbours exchanged. */
    static int distance(String a, String b) {
        String s = a.toLowerCase(Locale.ROOT);
        String t = b.toLowerCase(Locale.ROOT);
        int[][] d = new int[s.length() + 1][t.length() + 1];
        for (int i = 0; i <= s.length(); i++) {
            for (int j = 0; j <= t.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = s.charAt(i - 1) == t.charAt(j - 1) ? 0 : 1;
                int least = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                boolean exchanged =
                        i > 1 && j > 1 && s.charAt(i - 1) == t.charAt(j - 2) && s.charAt(i - 2) == t.charAt(j - 1);
                d[i][j] = exchanged ? Math.min(least, d[i - 2][j - 2] + 1) : least;
            }
        }
        return d[s.length()][t.length()];
    }
}
