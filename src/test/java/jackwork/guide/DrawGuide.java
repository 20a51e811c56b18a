package jackwork.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Makes the guide's pictures anew, and tells which lines it quotes that are no longer so. Exit 1 when there are any. */
final class DrawGuide {

    private DrawGuide() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("jackwork-guide");
        GuideWalk walk = GuideWalk.walk(folder, GuideWalk.PICTURES);
        System.out.println("made " + GuideWalk.PICTURES);
        List<Quote> wrong =
                walk.quotes().stream().filter(quote -> !quote.isTrue()).toList();
        for (Quote quote : wrong) {
            System.out.println(quote + "\n  All of it:");
            quote.found().forEach(line -> System.out.println("    " + line));
        }
        System.exit(wrong.isEmpty() ? 0 : 1);
    }
}
