package jackwork;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A program of its own, for tests to kill, to starve of room or to let run beside another. */
public record Child(Process process) {

    /** What each of the tests that kill does in the usual run; {@code ./check kills N} asks for more. */
    public static int kills(int usual, int outOfAll) {
        int all = Integer.getInteger("jackwork.kills", 0);
        return all == 0 ? usual : all * usual / outOfAll;
    }

    /** @param before words before the command: a shell that limits, a user that may do less */
    public static Child start(List<String> before, Class<?> main, String... arguments) throws IOException {
        return start(before, List.of("-Xmx256m"), classes(), main, arguments);
    }

    /** Where this test's own classes are. */
    public static String classes() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    /**
     * @param before as above
     * @param java options of its own
     * @param classes where it finds its own
     */
    public static Child start(
            List<String> before, List<String> java, String classes, Class<?> main, String... arguments)
            throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xshare:auto"));
        command.addAll(java);
        command.addAll(List.of("-cp", classes, main.getName()));
        command.addAll(List.of(arguments));
        return new Child(new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectInput(new File("/dev/null"))
                .start());
    }

    /** Lets it say one letter, waits, and kills it outright. */
    public List<String> killAfter(long milliseconds) throws IOException, InterruptedException {
        int first = process.getInputStream().read();
        Thread.sleep(milliseconds);
        // By its handle: that leaves open what it said.
        process.toHandle().destroyForcibly();
        String said = (first < 0 ? "" : (char) first) + rest();
        if (process.waitFor() != 128 + 9) {
            throw new AssertionError("it ended by itself: " + said);
        }
        // The last word may be cut short.
        return said.substring(0, said.lastIndexOf('\n') + 1).lines().toList();
    }

    /** All that it says to its end. */
    public String rest() throws IOException {
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    /** Whether this user may make a disk of a size of their own. */
    public static boolean maySetUpADisk(Path at) throws IOException, InterruptedException {
        return new ProcessBuilder("unshare", "-m", "mount", "-t", "tmpfs", "-o", "size=1m", "none", at.toString())
                        .start()
                        .waitFor()
                == 0;
    }

    /** Words that take from root what others may not. */
    public static List<String> lesser() {
        return System.getProperty("user.name").equals("root")
                ? List.of("setpriv", "--bounding-set=-dac_override,-dac_read_search", "--inh-caps=-all")
                : List.of();
    }
}
