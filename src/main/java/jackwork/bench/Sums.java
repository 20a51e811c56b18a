package jackwork.bench;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** SHA-256, in hexadecimal. */
final class Sums {

    private Sums() {}

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Of each file, by its path. */
    static SortedMap<String, String> of(Map<String, byte[]> files) {
        SortedMap<String, String> sums = new TreeMap<>();
        files.forEach((path, bytes) -> sums.put(path, sha256(bytes)));
        return sums;
    }

    /** One for all: of the lines "sum, two blanks, path" in the paths' order, as sha256sum writes them. */
    static String fingerprint(SortedMap<String, String> sums) {
        String lines = sums.entrySet().stream()
                .map(entry -> entry.getValue() + "  " + entry.getKey() + "\n")
                .collect(Collectors.joining());
        return sha256(lines.getBytes(StandardCharsets.UTF_8));
    }
}
