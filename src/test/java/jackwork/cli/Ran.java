package jackwork.cli;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * A command as typed, with what came of it: results on stdout, talk on stderr. Several may run at once: each thread, and
 * those that it starts, has its streams caught apart from others'.
 */
public record Ran(int exit, String out, String err) {

    private static final Caught OUT = new Caught(System.out);
    private static final Caught ERR = new Caught(System.err);

    static {
        System.setOut(new PrintStream(OUT, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(ERR, true, StandardCharsets.UTF_8));
    }

    public static Ran run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OUT.target.set(out);
        ERR.target.set(err);
        try {
            int exit = Main.run(arguments);
            System.out.flush();
            System.err.flush();
            return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
        } finally {
            OUT.target.remove();
            ERR.target.remove();
        }
    }

    /** Where what it says on stderr does not matter. */
    Ran withoutTalk() {
        return new Ran(exit, out, "");
    }

    private static final class Caught extends OutputStream {

        private final PrintStream otherwise;
        private final InheritableThreadLocal<ByteArrayOutputStream> target = new InheritableThreadLocal<>();

        Caught(PrintStream otherwise) {
            this.otherwise = otherwise;
        }

        @Override
        public void write(int one) {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
            ByteArrayOutputStream caught = target.get();
            if (caught == null) {
                otherwise.write(bytes, from, length);
            } else {
                caught.write(bytes, from, length);
            }
        }
    }
}
