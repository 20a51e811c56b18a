package jackwork.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Makes the guide's pictures anew, and tells which lines that it quotes are no longer printed. Exit 1 when there are any. */
final class DrawGuide {

    private DrawGuide() {}

    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("jackwork-guide");
        GuideWalk walk = GuideWalk.walk(folder, GuideWalk.PICTURES);
        List<GuideWalk.Said> wrong =
                walk.said().stream().filter(said -> !said.missing().isEmpty()).toList();
        for (GuideWalk.Said said : wrong) {
            System.out.println(said.page() + ": jackwork " + said.command() + "\n  does not print  " + said.missing()
                    + "\n  but\n    " + String.join("\n    ", said.printed()));
        }
        System.exit(wrong.isEmpty() ? 0 : 1);
    }
}
