package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.geometry.Pose;
import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import jackwork.parts.Stopping;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether the wood of lever and bucket bears the press that is refused: where tooth and strut bear on each other, what could be
 * split off there, arms and necks between pivots and forces, and the glue between layers. The kicker is not asked about: without
 * a coin nothing is in its way, so no force of the press comes to it but through the layers that it is glued to.
 */
final class WoodBearsPress implements Question {

    /** A split begins so far within the wood, mm. */
    private static final double WITHIN = 0.3;

    /** Steps of the way along which it is looked for, mm. */
    private static final double STEP = 0.25;

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Optional<RefusedPress> found = RefusedPress.of(assembly);
        if (found.isEmpty()) {
            return List.of();
        }
        RefusedPress press = found.get();
        return PressAnswer.refused(
                        press,
                        "wood",
                        say("Does the wood of tooth, strut and lever bear the strongest press without a coin?"),
                        loads -> gives(assembly, press, loads))
                .ask(new Where("tooth", 0.0, press.at()), (first, strongest) -> remedy(first, assembly.coinWorks()));
    }

    private static Sentence remedy(Gives first, CoinWorks works) {
        Sentence away = say("move the tooth farther from the lever's pivot");
        if (first.part().toString().startsWith("the glue")) {
            return say("Let these two layers cover each other farther, or {}.", away);
        }
        if (first.how().equals("crushes")) {
            return say("Let tooth and strut overlap more or meet in more layers, or {}.", away);
        }
        return say(
                "Draw it wider there or glue another layer to it, set what the {} rests on nearer to its strut, or {}.",
                works.bucketWord(),
                away);
    }

    private static List<Gives> gives(Assembly assembly, RefusedPress press, RefusedPress.Loads loads) {
        Lever lever = assembly.lever();
        CoinWorks works = assembly.coinWorks();
        List<Gives> all = new ArrayList<>();
        all.add(bite(press, loads));
        Map<Integer, Double> shares = shares(press.bites());
        int finger = pressed(assembly).layer();
        PressedWood arms = new PressedWood(
                "the lever",
                assembly.body(lever.body()).parts(),
                Pose.about(lever.pivot(), press.turned()),
                lever.pivot(),
                assembly.leverBearing(),
                List.of(
                        PressedWood.Force.inLayer("the finger", press.press(), new Point(0, -1), finger),
                        new PressedWood.Force("its tooth", press.at(), loads.onTooth(), shares)));
        all.addAll(arms.gives());
        all.add(split("the tooth", press, true, loads));
        Bearing bearing = assembly.bucketBearing();
        List<PressedWood.Force> forces = new ArrayList<>();
        forces.add(new PressedWood.Force("its strut's end", press.at(), loads.onStrut(), shares));
        Stopping.Obstacle stop = press.stop();
        if (stop != null && loads.byStop().length() > 0) {
            forces.add(
                    PressedWood.Force.inLayer("what it rests on", stop.meeting().at(), loads.byStop(), stop.layer()));
        }
        all.addAll(new PressedWood(
                        "the " + works.bucketWord(),
                        assembly.body(works.bucket()).parts(),
                        Pose.about(works.pivot(), works.rest()),
                        works.pivot(),
                        bearing,
                        forces)
                .gives());
        all.add(split("the strut", press, false, loads));
        return all;
    }

    /** By thickness and width of what bears. */
    private static Map<Integer, Double> shares(List<RefusedPress.Bite> bites) {
        double whole = bites.stream()
                .mapToDouble(bite -> bite.thickness() * bite.width())
                .sum();
        Map<Integer, Double> shares = new HashMap<>();
        bites.forEach(bite -> shares.merge(bite.tooth().layer(), bite.thickness() * bite.width() / whole, Double::sum));
        return shares;
    }

    /** The lever's layer that the finger is on. */
    static Part pressed(Assembly assembly) {
        Point press = assembly.lever().pressDrawn();
        return assembly.body(assembly.lever().body()).parts().stream()
                .min(Comparator.comparingDouble(
                        part -> part.drawn().contains(press) ? 0 : part.drawn().distanceToEdge(press)))
                .orElseThrow();
    }

    private static Gives bite(RefusedPress press, RefusedPress.Loads loads) {
        double area = press.bites().stream()
                .mapToDouble(bite -> bite.thickness() * bite.width())
                .sum();
        List<Part> parts = new ArrayList<>();
        press.bites().forEach(bite -> parts.addAll(List.of(bite.tooth(), bite.strut())));
        Part weakest = PressedWood.weakest(parts);
        return new Gives(
                say("the wood between tooth and strut"),
                "crushes",
                loads.normal() / area,
                weakest.kind().strength().edgewise(),
                "strength of " + weakest.kind().label() + " edgewise",
                Words.number(loads.normal()) + " N / " + Words.number(area) + " mm² that bear in "
                        + press.bites().size() + " layers");
    }

    /** Split off along the force, from where it bears to the next edge. */
    private static Gives split(String what, RefusedPress press, boolean ofTooth, RefusedPress.Loads loads) {
        Assembly assembly = press.assembly();
        Pose pose = ofTooth
                ? Pose.about(assembly.lever().pivot(), press.turned())
                : Pose.about(assembly.coinWorks().pivot(), assembly.coinWorks().rest());
        Point into = ofTooth ? press.normal() : press.normal().times(-1);
        double area = 0;
        List<Part> parts = new ArrayList<>();
        for (RefusedPress.Bite bite : press.bites()) {
            Part part = ofTooth ? bite.tooth() : bite.strut();
            parts.add(part);
            area += part.thickness().value() * depth(part.outline().moved(pose), press.at(), into);
        }
        Part weakest = PressedWood.weakest(parts);
        return new Gives(
                say("{}", what),
                "splits along the press",
                loads.normal() / area,
                weakest.kind().strength().shear(),
                "strength of " + weakest.kind().label() + " in shear",
                Words.number(loads.normal()) + " N / " + Words.number(area) + " mm² behind where it bears");
    }

    private static double depth(Outline wood, Point from, Point into) {
        double far = WITHIN;
        while (wood.contains(from.plus(into.times(far)))) {
            far += STEP;
        }
        return far;
    }
}
