package jackwork.parts;

import jackwork.design.CamEntry;
import jackwork.design.CaseEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PinEntry;
import jackwork.design.StringEntry;
import jackwork.design.TouchEntry;
import jackwork.design.Works;
import jackwork.geometry.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Finds every rod and screw of a design in what its files say. */
final class RodRuns {

    private final Design design;
    private final Assembly assembly;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final List<RodRun> runs = new ArrayList<>();

    RodRuns(Design design, Assembly assembly) {
        this.design = design;
        this.assembly = assembly;
        assembly.parts().forEach(part -> parts.put(part.name(), part));
    }

    List<RodRun> collect() {
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.pins().forEach((name, pin) -> pin(works, name, pin));
            pegs(works);
        }
        mounts();
        screws();
        return List.copyOf(runs);
    }

    private void pin(Works works, String name, PinEntry pin) {
        Double shoulder = pin.shoulder();
        int holder = bodyOf(Borings.tight(pin));
        boolean turns = pin.parts().stream().anyMatch(part -> bodyOf(part) != holder);
        Point at = Posts.at(design, works, name, pin);
        add(name, RodRun.Kind.PIN, pin.parts(), pin.reaches(), at, rod(pin.rod()));
        if (shoulder != null && turns) {
            // The sleeve is as long as what turns on it, and no longer.
            List<String> runners =
                    pin.parts().stream().filter(part -> bodyOf(part) != holder).toList();
            add(name, RodRun.Kind.SHOULDER, runners, at, shoulder);
        }
    }

    private void pegs(Works works) {
        works.slides()
                .forEach((name, slide) -> peg(
                        name,
                        List.of(slide.part(), slide.in()),
                        Places.at(design, works, slide.peg(), name),
                        slide.rod()));
        works.joints(CamEntry.class)
                .forEach((name, cam) -> peg(
                        name,
                        List.of(cam.follower().part(), cam.part()),
                        Places.at(design, works, cam.follower().at(), ""),
                        cam.rod()));
        works.joints(TouchEntry.class)
                .forEach((name, touch) -> peg(
                        name,
                        List.of(touch.part(), touch.on()),
                        touch.peg() == null ? Point.ORIGIN : Places.at(design, works, touch.peg(), ""),
                        touch.rod()));
        works.joints(StringEntry.class).forEach((name, string) -> {
            for (StringEntry.GuideEntry guide : string.over()) {
                peg(name, List.of(guide.part()), Places.at(design, works, guide.at(), ""), guide.rod());
            }
        });
    }

    /** @param rod null where an edge or an eyelet does without one */
    private void peg(String name, List<String> named, Point at, @Nullable String rod) {
        if (rod != null) {
            add(name, RodRun.Kind.PEG, named, at, rod(rod));
        }
    }

    private void mounts() {
        design.figure().works().mounts().forEach((name, mount) -> {
            List<String> named = new ArrayList<>(mount.parts());
            named.addAll(Named.in(design.box().works().mounts(), name).parts());
            add(name, RodRun.Kind.MOUNT, named, design.inFigure(mount.at(), name), rod(mount.rod()));
        });
    }

    /** Those that go through a plate of the works; one that goes through none has a finding of its case. */
    private void screws() {
        CaseEntry housing = design.box().housing();
        for (int i = 0; housing != null && i < housing.screws().size(); i++) {
            Point at = design.inBox(housing.screws().get(i), "");
            List<String> plates = assembly.body(0).parts().stream()
                    .filter(part -> part.ofBox() && part.drawn().filled().contains(at))
                    .map(Part::name)
                    .toList();
            add("screw " + (i + 1), RodRun.Kind.SCREW, plates, at, RodRun.SCREW_COLUMN);
        }
    }

    private void add(String name, RodRun.Kind kind, List<String> named, Point at, double diameter) {
        add(name, kind, named, named, at, diameter);
    }

    /** @param reached parts whose layers it goes into, those that it passes and others */
    private void add(
            String name, RodRun.Kind kind, List<String> named, List<String> reached, Point at, double diameter) {
        List<String> through = new ArrayList<>();
        int from = Integer.MAX_VALUE;
        int to = Integer.MIN_VALUE;
        for (String one : reached) {
            for (int ply = 1; parts.containsKey(PartEntry.ply(one, ply)); ply++) {
                Part part = Named.in(parts, PartEntry.ply(one, ply));
                if (named.contains(one)) {
                    through.add(part.name());
                }
                from = Math.min(from, part.layer());
                to = Math.max(to, part.layer());
            }
        }
        if (!through.isEmpty()) {
            runs.add(new RodRun(name, kind, List.copyOf(through), at, diameter, from, to));
        }
    }

    private int bodyOf(String part) {
        return part.equals(Body.GROUND) ? 0 : assembly.bodyOf(part);
    }

    private double rod(String name) {
        return Named.in(design.workshop().rods(), name).diameter().value();
    }
}
