package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.JointEntry;
import jackwork.design.JointKind;
import jackwork.design.JointKinds;
import jackwork.design.Works;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes gears, cams, strings and the other links of a design from what is written, each by its kind. */
final class LinkMaker {

    private LinkMaker() {}

    static List<Link> make(Design design, Map<String, Part> parts, Map<String, Integer> bodyOf) {
        Map<String, Teeth.Placed> teeth = Teeth.of(design);
        List<Link> links = new ArrayList<>();
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            Joining around = new Joining(design, works, parts, bodyOf, teeth);
            for (JointKind<?> kind : JointKinds.all()) {
                add((LinkKind<?, ?>) kind, works, around, links);
            }
        }
        return List.copyOf(links);
    }

    private static <E extends JointEntry> void add(LinkKind<E, ?> kind, Works works, Joining around, List<Link> links) {
        works.joints(kind.entry()).forEach((name, entry) -> links.add(kind.make(name, entry, around)));
    }
}
