package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PartEntry;
import jackwork.design.PinEntry;
import jackwork.design.Place;
import jackwork.design.SlideEntry;
import jackwork.design.StopEntry;
import jackwork.design.WeightEntry;
import jackwork.design.Works;
import jackwork.geometry.Point;
import jackwork.geometry.Wanted;
import jackwork.stock.Fastener;
import jackwork.stock.Fasteners;
import jackwork.stock.FrictionPair;
import jackwork.stock.RodKind;
import jackwork.stock.Rods;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Puts a design together: which parts are one body, what each body weighs, what joins them. */
public final class Assembler {

    private final Design design;
    private final Map<String, Part> parts;
    private final Layers layers;
    /** Part name to body number. */
    private final Map<String, Integer> bodyOf = new LinkedHashMap<>();

    private final List<String> bodyNames = new ArrayList<>();
    private final List<List<Part>> bodyParts = new ArrayList<>();
    private final List<List<Lump>> bodyLumps = new ArrayList<>();
    private final List<PinJoint> pins = new ArrayList<>();
    private final List<SlideJoint> slides = new ArrayList<>();
    private final List<Stop> stops = new ArrayList<>();

    private Assembler(Design design) {
        this.design = design;
        this.parts = PartMaker.make(design);
        this.layers = Layers.of(List.copyOf(parts.values()));
    }

    public static Assembly assemble(Design design) {
        Assembler assembler = new Assembler(design);
        assembler.group();
        assembler.join(design.box().works());
        assembler.join(design.figure().works());
        assembler.addMountRods();
        return assembler.finish();
    }

    private void group() {
        Set<String> fixed = new LinkedHashSet<>(design.box().works().fixed());
        fixed.addAll(design.figure().works().fixed());
        List<Set<String>> groups = new ArrayList<>();
        groups.add(fixed);
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.glued().forEach(group -> groups.add(new LinkedHashSet<>(group)));
        }
        Set<String> grouped = new LinkedHashSet<>();
        groups.forEach(grouped::addAll);
        for (Works works : List.of(design.box().works(), design.figure().works())) {
            works.parts().keySet().stream()
                    .filter(name -> !grouped.contains(name))
                    .forEach(name -> groups.add(Set.of(name)));
        }
        bodyOf.put(Body.GROUND, 0);
        for (int i = 0; i < groups.size(); i++) {
            Wanted.goOn();
            List<Part> members = new ArrayList<>();
            for (String name : groups.get(i)) {
                for (Part ply : plies(name)) {
                    bodyOf.put(ply.name(), i);
                    members.add(ply);
                }
            }
            bodyNames.add(i == 0 ? Body.GROUND : groups.get(i).iterator().next());
            bodyParts.add(members);
            bodyLumps.add(new ArrayList<>());
        }
    }

    /** A part and those glued behind it to make it thick. */
    private List<Part> plies(String name) {
        List<Part> plies = new ArrayList<>();
        for (int ply = 1; parts.containsKey(PartEntry.ply(name, ply)); ply++) {
            plies.add(Named.in(parts, PartEntry.ply(name, ply)));
        }
        return plies;
    }

    private Point at(Works works, @Nullable Place place, String fallback) {
        return Places.at(design, works, place, fallback);
    }

    private void join(Works works) {
        works.pins().forEach((name, pin) -> addPin(works, name, pin));
        works.slides().forEach((name, slide) -> addSlide(works, name, slide));
        works.stops().forEach((name, stop) -> addStop(works, name, stop));
        works.weights().forEach((name, weight) -> addWeight(works, name, weight));
    }

    private void addPin(Works works, String name, PinEntry pin) {
        Point at = Posts.at(design, works, name, pin);
        String tight = Borings.tight(pin);
        int holder = Named.in(bodyOf, tight);
        Double shoulder = pin.shoulder();
        double radius = (shoulder == null ? rodDiameter(pin.rod()) : shoulder) / 2;
        Map<Integer, List<Part>> runners = new LinkedHashMap<>();
        for (String part : pin.parts()) {
            int body = Named.in(bodyOf, part);
            if (body != holder && !part.equals(Body.GROUND)) {
                runners.computeIfAbsent(body, k -> new ArrayList<>()).addAll(plies(part));
            }
        }
        runners.forEach((runner, members) -> {
            String joint = runners.size() == 1 ? name : name + "/" + bodyNames.get(runner);
            FrictionPair friction = shoulder == null
                    ? friction(pin.rod(), members.get(0))
                    : Friction.between(
                            design.workshop(),
                            Printing.SURFACE,
                            members.get(0).kind().surface());
            pins.add(new PinJoint(joint, holder, runner, at, radius, friction));
            if (shoulder != null) {
                double bearing = Bearing.length(bodyParts.get(runner), members, layers);
                bodyLumps
                        .get(holder)
                        .add(sleeve(joint, at, new Sleeve(shoulder, rodDiameter(pin.rod()), bearing + Sleeve.PLAY)));
            }
        });
        bodyLumps.get(holder).add(rod(name, pin.rod(), pin.reaches(), at));
    }

    /** The rods that join figure and box stand with the ground. */
    private void addMountRods() {
        design.figure().works().mounts().forEach((name, mount) -> {
            List<String> through = new ArrayList<>(mount.parts());
            through.addAll(Named.in(design.box().works().mounts(), name).parts());
            bodyLumps.get(0).add(rod(name, mount.rod(), through, design.inFigure(mount.at(), name)));
        });
    }

    /** The rod itself, as long as the layers it passes, each taken as thick as the thickest sheet used there. */
    private Lump rod(String name, String rod, List<String> through, Point at) {
        int low = Integer.MAX_VALUE;
        int high = Integer.MIN_VALUE;
        double pitch = 0;
        for (String partName : through) {
            for (Part part : plies(partName)) {
                low = Math.min(low, part.layer());
                high = Math.max(high, part.layer());
                pitch = Math.max(pitch, part.thickness().value());
            }
        }
        double length = (high - low + 1) * pitch;
        double density = rodKind(rod).density().value() / 1000;
        double radius = rodDiameter(rod) / 2;
        return new Lump(name, rod, at, Math.PI * radius * radius * length * density, radius);
    }

    private Lump sleeve(String joint, Point at, Sleeve sleeve) {
        double density = design.workshop().printerOrGuess().density().value() / 1000;
        return new Lump(joint + " sleeve", "printed", at, sleeve.volume() * density, sleeve.outside() / 2);
    }

    private void addSlide(Works works, String name, SlideEntry slide) {
        slides.add(new SlideJoint(
                name,
                Named.in(bodyOf, slide.part()),
                Named.in(bodyOf, slide.in()),
                at(works, slide.peg(), name),
                at(works, slide.from(), ""),
                slide.via() == null ? null : at(works, slide.via(), ""),
                at(works, slide.to(), ""),
                rodDiameter(slide.rod()) / 2,
                Bores.on(design, slide.in(), slide.rod(), false),
                friction(slide.rod(), Named.in(parts, slide.in()))));
    }

    private void addStop(Works works, String name, StopEntry stop) {
        stops.add(new Stop(
                name,
                Named.in(bodyOf, stop.between().get(0)),
                Named.in(bodyOf, stop.between().get(1)),
                pinAt(works, stop.pin()),
                Math.toRadians(stop.from()),
                Math.toRadians(stop.to())));
    }

    /** A figure may name a pin of its box. */
    private Point pinAt(Works works, String name) {
        Works of = works.pins().containsKey(name) ? works : design.box().works();
        return at(of, Named.in(of.pins(), name).at(), name);
    }

    private void addWeight(Works works, String name, WeightEntry weight) {
        Point at = at(works, weight.at(), name);
        Double mass = weight.mass();
        String what = weight.what();
        double radius = 4;
        double each = mass == null ? 0 : mass;
        if (what != null) {
            Fastener fastener = Fasteners.catalogue().find(what).orElseThrow();
            each = fastener.mass().value();
            radius = fastener.across() / 2;
        }
        Integer count = weight.count();
        double all = each * (count == null ? 1 : count);
        bodyLumps
                .get(Named.in(bodyOf, weight.on()))
                .add(new Lump(name, what == null ? Lump.MASS : what, at, all, radius));
    }

    private Assembly finish() {
        List<Body> bodies = new ArrayList<>();
        for (int i = 0; i < bodyNames.size(); i++) {
            bodies.add(Body.of(bodyNames.get(i), bodyParts.get(i), bodyLumps.get(i)));
        }
        requireMoving(bodies);
        Assembly bare = new Assembly(
                design.name(),
                design.workshop(),
                AsMade.asNumbered(design.workshop().printerOrGuess().off().value()),
                List.copyOf(bodies),
                List.copyOf(pins),
                List.copyOf(slides),
                List.copyOf(stops),
                LinkMaker.make(design, parts, bodyOf),
                CoinWorksMaker.lever(design, bodyOf),
                CoinWorksMaker.make(design, bodyOf, bodies),
                Artwork.of(design),
                List.of(),
                List.of());
        requireBearing(bare);
        Assembly wished = bare.withRods(RodRun.of(design, bare));
        List<Stopping> ends = Stopping.of(design, wished);
        ends.forEach(this::requireEnd);
        return wished.stopped(ends);
    }

    /** A rod that one of them grips, and that no layer of the box is bored for, leaves nothing to say of its room. */
    private void requireBearing(Assembly assembly) {
        CoinWorks works = assembly.coinWorks();
        requireBearing(
                assembly, "lever.pin", assembly.lever().pin(), assembly.lever().body());
        requireBearing(assembly, "coin-works.bucket.pin", works.pin(), works.bucket());
    }

    private void requireBearing(Assembly assembly, String key, String pin, int body) {
        if (assembly.pinOf(pin, body).isEmpty()) {
            throw new PartException(
                    design.fileOf(design.box().works()) + ": " + key,
                    "read " + pin
                            + ", in which no layer is bored to run on the rod; name parts of the box among the parts of pins."
                            + pin + " instead of `box`, or let them grip it: leave `tight` out");
        }
    }

    /** Lever and bucket must be bodies of their own, or nothing could work. */
    private void requireMoving(List<Body> bodies) {
        int lever = Named.in(bodyOf, design.box().lever().part());
        int bucket = Named.in(bodyOf, design.box().coinWorks().bucket().part());
        if (lever == 0 || bucket == 0 || lever == bucket) {
            throw new PartException(
                    design.fileOf(design.box().works()) + ": lever.part",
                    "lever " + bodies.get(lever).name() + " and bucket "
                            + bodies.get(bucket).name()
                            + " must each move by itself; take them out of `fixed`, and of one another's glue");
        }
    }

    /** Where no angle is wished, something must stop it, or nobody knows how far it goes. */
    private void requireEnd(Stopping stopping) {
        if (!stopping.end().wished() && !stopping.holds()) {
            boolean lever = stopping.end().kind() == TurningEnd.Kind.LEVER_PRESSED;
            Stopping.Obstacle met = stopping.met();
            throw new PartException(
                    design.fileOf(design.box().works()) + ": " + (lever ? "lever.throw" : "coin-works.bucket.tip"),
                    "it is left out, and nothing stops the " + stopping.end().name()
                            + (met == null
                                    ? ""
                                    : ": " + met.by()
                                            + ", which it meets first, lies too near its pivot or too slanting to its"
                                            + " way")
                            + "; write how far it is to go, in degrees, or set a post in its way");
        }
    }

    private double rodDiameter(String rod) {
        return Named.in(design.workshop().rods(), rod).diameter().value();
    }

    private RodKind rodKind(String rod) {
        return Rods.catalogue()
                .find(Named.in(design.workshop().rods(), rod).kind())
                .orElseThrow();
    }

    private FrictionPair friction(String rod, Part on) {
        return Friction.between(
                design.workshop(), rodKind(rod).surface(), on.kind().surface());
    }
}
