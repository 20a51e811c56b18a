package jackwork.demo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.imageio.ImageIO;

/**
 * Draws every picture of the demo workshop, our own all of them; {@code main} writes them into the folder that it is
 * given, {@code demo} when left out. A test holds the files against what is drawn here.
 */
final class DemoPictures {

    /** By file, from the workshop's folder. */
    static final Map<String, Supplier<BufferedImage>> ALL = all();

    private DemoPictures() {}

    private static Map<String, Supplier<BufferedImage>> all() {
        Map<String, Supplier<BufferedImage>> all = new LinkedHashMap<>();
        all.put("heron/heron-body.png", HeronPictures::body);
        all.put("heron/heron-head.png", HeronPictures::head);
        all.put("lamplighter/glow.png", LamplighterPictures::glow);
        all.put("lamplighter/face.png", LamplighterPictures::face);
        all.put("lamplighter/coat.png", LamplighterPictures::coat);
        all.put("windmill/wall.png", WindmillPictures::wall);
        all.put("windmill/roof.png", WindmillPictures::roof);
        all.put("windmill/miller.png", WindmillPictures::miller);
        all.put("cobbler/workshop.png", CobblerPictures::workshop);
        all.put("cobbler/face.png", CobblerPictures::face);
        all.put("cobbler/apron.png", CobblerPictures::apron);
        return all;
    }

    public static void main(String[] words) throws IOException {
        Path folder = Path.of(words.length > 0 ? words[0] : "demo");
        for (Map.Entry<String, Supplier<BufferedImage>> picture : ALL.entrySet()) {
            Path file = folder.resolve(picture.getKey());
            ImageIO.write(picture.getValue().get(), "png", file.toFile());
            System.out.println(file);
        }
    }
}
