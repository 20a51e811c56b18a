package jackwork.parts;

import jackwork.design.Design;
import jackwork.design.LimitEntry;
import jackwork.design.MeshEntry;
import jackwork.design.Named;
import jackwork.design.PawlEntry;
import jackwork.design.Place;
import jackwork.design.PointOf;
import jackwork.design.RackEntry;
import jackwork.design.SpringEntry;
import jackwork.design.StringEntry;
import jackwork.design.TorqueEntry;
import jackwork.design.TouchEntry;
import jackwork.design.Works;
import jackwork.design.WorkshopFile;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import jackwork.stock.Rods;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes gears, cams, strings and the other links of a design from what is written. */
final class LinkMaker {

    private static final String CORD = "cord";

    private final Design design;
    private final Map<String, Part> parts;
    private final Map<String, Integer> bodyOf;
    private final Map<String, Teeth.Placed> teeth;
    private final List<Link> links = new ArrayList<>();

    private LinkMaker(Design design, Map<String, Part> parts, Map<String, Integer> bodyOf) {
        this.design = design;
        this.parts = parts;
        this.bodyOf = bodyOf;
        this.teeth = Teeth.of(design);
    }

    static List<Link> make(Design design, Map<String, Part> parts, Map<String, Integer> bodyOf) {
        LinkMaker maker = new LinkMaker(design, parts, bodyOf);
        for (Works works : List.of(design.box(), design.figure())) {
            works.meshes().forEach((name, mesh) -> maker.addMesh(name, mesh));
            works.racks().forEach((name, rack) -> maker.addRack(name, rack));
            works.cams()
                    .forEach((name, cam) -> maker.links.add(new CamPair(
                            name,
                            maker.body(cam.follower().part()),
                            maker.at(works, cam.follower().at(), ""),
                            maker.rodRadius(cam.rod()),
                            maker.body(cam.part()),
                            cam.part(),
                            Cams.centre(design, works, name, cam),
                            Cams.profile(design, works, name, cam),
                            maker.onRod(cam.rod(), cam.part()))));
            works.pawls().forEach((name, pawl) -> maker.addPawl(works, name, pawl));
            works.strings().forEach((name, string) -> maker.addString(works, name, string));
            works.limits().forEach((name, limit) -> maker.addLimit(works, name, limit));
            works.touches().forEach((name, touch) -> maker.addTouch(works, name, touch));
            works.springs().forEach((name, spring) -> maker.addSpring(works, name, spring));
            works.torques().forEach((name, torque) -> maker.addTorque(name, torque));
        }
        return List.copyOf(maker.links);
    }

    private void addMesh(String name, MeshEntry mesh) {
        Teeth.Placed first = Named.in(teeth, mesh.between().get(0));
        Teeth.Placed second = Named.in(teeth, mesh.between().get(1));
        boolean swapped = Teeth.isInside(first.entry());
        Teeth.Placed a = swapped ? second : first;
        Teeth.Placed b = swapped ? first : second;
        links.add(new GearMesh(
                name,
                body(a.entry().part()),
                a.centre(),
                a.gear(),
                a.entry().part(),
                body(b.entry().part()),
                b.centre(),
                b.gear(),
                b.entry().part(),
                Teeth.isInside(b.entry()),
                between(a.entry().part(), b.entry().part())));
    }

    private void addRack(String name, RackEntry rack) {
        Teeth.Placed gear = Named.in(teeth, rack.gear());
        Point pitchPoint =
                gear.centre().plus(new Point(gear.gear().pitchRadius(), 0).turned(Math.toRadians(rack.toward())));
        links.add(new RackMesh(
                name,
                body(gear.entry().part()),
                gear.centre(),
                gear.gear(),
                gear.entry().part(),
                body(rack.part()),
                pitchPoint,
                rack.part(),
                between(gear.entry().part(), rack.part())));
    }

    /** The ratchet that a pawl's entry describes. */
    static RatchetWheel wheel(PawlEntry pawl) {
        return new RatchetWheel(
                pawl.teeth(), pawl.radius(), pawl.depth(), Math.toRadians(5), Boolean.TRUE.equals(pawl.clockwise()));
    }

    static double firstTooth(PawlEntry pawl) {
        Double first = pawl.first();
        return first == null ? 0 : Math.toRadians(first);
    }

    private void addPawl(Works works, String name, PawlEntry pawl) {
        RatchetWheel wheel = wheel(pawl);
        links.add(new RatchetPair(
                name,
                body(pawl.tip().part()),
                at(works, pawl.tip().at(), ""),
                pawl.tipRadius(),
                body(pawl.wheel()),
                pawl.wheel(),
                wheel,
                wheel.outline(Places.at(design, works, pawl.at(), name), firstTooth(pawl))
                        .outer(),
                between(pawl.tip().part(), pawl.wheel())));
    }

    private void addString(Works works, String name, StringEntry string) {
        WorkshopFile.CordEntry cord = Named.in(design.workshop().cords(), string.cord());
        List<StringRun.Guide> guides = new ArrayList<>();
        for (StringEntry.GuideEntry guide : string.over()) {
            String rod = guide.rod();
            String eye = guide.eyelet() == null ? surface(guide.part()) : Printing.SURFACE;
            String surface = rod == null ? eye : rodSurface(rod);
            guides.add(new StringRun.Guide(
                    body(guide.part()),
                    at(works, guide.at(), ""),
                    rod == null ? 0 : rodRadius(rod) + cord.diameter().value() / 2,
                    "right".equals(guide.turns()) ? -1 : 1,
                    Friction.between(design.workshop(), CORD, surface)));
        }
        Double slack = string.slack();
        links.add(new StringRun(
                name,
                body(string.from().part()),
                at(works, string.from().at(), ""),
                string.from().part(),
                guides,
                body(string.to().part()),
                at(works, string.to().at(), ""),
                string.to().part(),
                string.cord(),
                cord.holds(),
                slack == null ? 0 : slack));
    }

    private void addLimit(Works works, String name, LimitEntry limit) {
        Double least = limit.least();
        Double most = limit.most();
        links.add(new DistanceLimit(
                name,
                body(limit.from().part()),
                at(works, limit.from().at(), ""),
                body(limit.to().part()),
                at(works, limit.to().at(), ""),
                least == null ? 0 : least,
                most == null ? Double.POSITIVE_INFINITY : most));
    }

    private void addTouch(Works works, String name, TouchEntry touch) {
        String rod = touch.rod();
        boolean peg = rod != null;
        links.add(new TouchPair(
                name,
                body(touch.part()),
                touch.part(),
                peg ? rodRadius(String.valueOf(rod)) : 0,
                peg
                        ? List.of(at(works, touch.peg(), ""))
                        : Named.in(parts, touch.part()).drawn().outer(),
                body(touch.on()),
                touch.on(),
                Named.in(parts, touch.on()).drawn().outer(),
                peg ? onRod(String.valueOf(rod), touch.on()) : between(touch.part(), touch.on())));
    }

    private void addSpring(Works works, String name, SpringEntry spring) {
        links.add(new SpringLink(
                name,
                body(spring.from().part()),
                point(works, spring.from()),
                body(spring.to().part()),
                point(works, spring.to()),
                spring.stiffness(),
                spring.free(),
                Boolean.TRUE.equals(spring.band())));
    }

    private void addTorque(String name, TorqueEntry torque) {
        int body = body(torque.on());
        if (body == 0) {
            throw new PartException("torque " + name + ": " + torque.on()
                    + " never moves, so that nothing can turn it; name a part that turns");
        }
        links.add(new Torque(name, body, torque.moment()));
    }

    private Point point(Works works, PointOf point) {
        return at(works, point.at(), "");
    }

    private Point at(Works works, @org.jspecify.annotations.Nullable Place place, String fallback) {
        return Places.at(design, works, place, fallback);
    }

    private int body(String part) {
        return Named.in(bodyOf, part);
    }

    private double rodRadius(String rod) {
        return Named.in(design.workshop().rods(), rod).diameter().value() / 2;
    }

    private String rodSurface(String rod) {
        return Rods.catalogue()
                .find(Named.in(design.workshop().rods(), rod).kind())
                .orElseThrow()
                .surface();
    }

    private String surface(String part) {
        return part.equals(Body.GROUND) ? "wood" : Named.in(parts, part).kind().surface();
    }

    private FrictionPair onRod(String rod, String part) {
        return Friction.between(design.workshop(), rodSurface(rod), surface(part));
    }

    private FrictionPair between(String a, String b) {
        return Friction.between(design.workshop(), surface(a), surface(b));
    }
}
