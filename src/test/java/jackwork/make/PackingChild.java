package jackwork.make;

import jackwork.design.DesignReader;
import jackwork.drawing.Paper;
import java.io.IOException;
import java.nio.file.Path;

/** A program that packs one design again and again; for tests to kill. */
final class PackingChild {

    private PackingChild() {}

    /** @param arguments design, where to write, how often */
    public static void main(String[] arguments) throws IOException {
        Pack pack = Pack.of(Makings.of(DesignReader.read(Path.of(arguments[0]))), 1, SheetSearch.usual());
        Path out = Path.of(arguments[1]);
        int most = Integer.parseInt(arguments[2]);
        System.out.println("begins");
        try {
            for (int i = 0; i < most; i++) {
                pack.write(out, Paper.A4, name -> {});
                System.out.println("packed");
            }
        } catch (IOException e) {
            System.out.println("! " + e);
        }
    }
}
