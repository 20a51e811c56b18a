package jackwork.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Makes the guide's pictures anew, and tells which lines it quotes that are no longer so. Exit 1 when there are any. */
final class DrawGuide {

    private DrawGuide() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("jackwork-guide");
        Path made = folder.resolve("pictures");
        GuideWalk walk = GuideWalk.walk(folder, made);
        replace(made);
        System.out.println("made " + GuideWalk.PICTURES + "; look at them");
        List<Quote> wrong =
                walk.quotes().stream().filter(quote -> !quote.isTrue()).toList();
        for (Quote quote : wrong) {
            System.out.println(quote + "\n  All of it:");
            quote.found().forEach(line -> System.out.println("    " + line));
        }
        System.exit(wrong.isEmpty() ? 0 : 1);
    }

    /** Only once all are made: what went wrong half-way leaves the old ones as they were. */
    private static void replace(Path made) throws IOException {
        Files.createDirectories(GuideWalk.PICTURES);
        for (Path folder : List.of(GuideWalk.PICTURES, made)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    if (folder.equals(made)) {
                        Files.copy(file, GuideWalk.PICTURES.resolve(file.getFileName()));
                    } else {
                        Files.delete(file);
                    }
                }
            }
        }
    }
}
