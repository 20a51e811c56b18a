package jackwork.parts;

import jackwork.design.WorkshopFile;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * A design put together in the position drawn. Bodies are numbered by their place in the list;
 * number 0 is the ground.
 *
 * @param made how its holes and rods come out
 * @param bodies the ground first
 * @param links gears, cams, strings and all other joints
 * @param artwork what is printed for it
 * @param rods every rod, and every screw of the case, as they go through the layers
 * @param ends of the ways of lever, bucket and stops, with what stops them there
 * @param pins between different bodies; dowels within one body hold but do not turn
 */
public record Assembly(
        String name,
        WorkshopFile workshop,
        AsMade made,
        List<Body> bodies,
        List<PinJoint> pins,
        List<SlideJoint> slides,
        List<Stop> stops,
        List<Link> links,
        Lever lever,
        CoinWorks coinWorks,
        Artwork artwork,
        List<RodRun> rods,
        List<Stopping> ends) {

    public Body body(int number) {
        return bodies.get(number);
    }

    /** Number of the body that a part belongs to. */
    public int bodyOf(String part) {
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).parts().stream().anyMatch(p -> p.name().equals(part))) {
                return i;
            }
        }
        throw new IllegalStateException("part " + part + " was not checked on reading");
    }

    /** Width of the gap in which the coin runs, mm: the thinnest part that keeps its walls apart. */
    public double coinGap() {
        return parts().stream()
                .filter(part -> part.ofBox() && part.layer() == coinWorks.layer())
                .filter(part -> {
                    int body = bodyOf(part.name());
                    return body == 0 || body == coinWorks.bucket();
                })
                .mapToDouble(part -> part.thickness().value())
                .min()
                .orElse(coinWorks.slotWidth());
    }

    /** Every flat part, box and figure, in the order of bodies. */
    public List<Part> parts() {
        return bodies.stream().flatMap(body -> body.parts().stream()).toList();
    }

    Assembly withBodies(List<Body> other) {
        return new Assembly(
                name, workshop, made, other, pins, slides, stops, links, lever, coinWorks, artwork, rods, ends);
    }

    /** Its links of one kind. */
    public <L extends Link> List<L> links(Class<L> kind) {
        return links.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The same design with holes and rods that come out otherwise. */
    Assembly withMade(AsMade other) {
        return new Assembly(
                name, workshop, other, bodies, pins, slides, stops, links, lever, coinWorks, artwork, rods, ends);
    }

    /** The same design with all that turns in it worn by so much, mm on diameter. */
    public Assembly worn(double grown) {
        return withMade(made.withWorn(grown));
    }

    public Bearing bearing(PinJoint pin) {
        return Bearing.of(this, pin);
    }

    /** Of every pin, in their order. */
    public List<Bearing> bearings() {
        return Bearing.of(this);
    }

    /** What the lever turns on. */
    public Bearing leverBearing() {
        return pinOf(lever.pin(), lever.body()).map(this::bearing).orElseThrow();
    }

    /** What the bucket tips on. */
    public Bearing bucketBearing() {
        return pinOf(coinWorks.pin(), coinWorks.bucket()).map(this::bearing).orElseThrow();
    }

    /** The joint of a pin that has a body on one of its sides. */
    Optional<PinJoint> pinOf(String name, int body) {
        return pins.stream()
                .filter(pin -> pin.holder() == body || pin.runner() == body)
                .filter(pin -> pin.name().equals(name) || pin.name().startsWith(name + "/"))
                .findFirst();
    }

    Assembly withRods(List<RodRun> other) {
        return new Assembly(
                name, workshop, made, bodies, pins, slides, stops, links, lever, coinWorks, artwork, other, ends);
    }

    /** The same design with other links. */
    Assembly withLinks(List<Link> other) {
        return new Assembly(
                name, workshop, made, bodies, pins, slides, stops, other, lever, coinWorks, artwork, rods, ends);
    }

    /** The same design with as much drag in each pin, N·mm, beside what its load makes it rub. */
    public Assembly withDrags(ToDoubleFunction<PinJoint> drag) {
        return withPins(
                pins.stream().map(pin -> pin.dragging(drag.applyAsDouble(pin))).toList());
    }

    /** The same design with holes of joints that came out elsewhere, mm from where they are drawn. */
    public Assembly drilled(Function<PinJoint, Point> off) {
        return withPins(pins.stream().map(pin -> pin.drilled(off.apply(pin))).toList());
    }

    /** The same design with what is fixed to its bodies heavier, lighter or elsewhere. */
    public Assembly withLumps(UnaryOperator<Lump> change) {
        return withBodies(bodies.stream()
                .map(body -> Body.of(
                        body.name(),
                        body.parts(),
                        body.lumps().stream().map(change).toList()))
                .toList());
    }

    private Assembly withPins(List<PinJoint> other) {
        return new Assembly(
                name, workshop, made, bodies, other, slides, stops, links, lever, coinWorks, artwork, rods, ends);
    }

    /** The same design with one pair of surfaces rubbing differently. */
    Assembly withFriction(FrictionPair pair, FrictionPair other) {
        List<PinJoint> changedPins = pins.stream()
                .map(pin -> pin.friction().equals(pair) ? pin.rubbing(other) : pin)
                .toList();
        List<SlideJoint> changedSlides = slides.stream()
                .map(slide -> slide.friction().equals(pair) ? slide.rubbing(other) : slide)
                .toList();
        List<Link> changedLinks =
                links.stream().map(link -> link.rubbing(pair, other)).toList();
        return new Assembly(
                name,
                workshop,
                made,
                bodies,
                changedPins,
                changedSlides,
                stops,
                changedLinks,
                lever,
                coinWorks.rubbing(pair, other),
                artwork,
                rods,
                ends);
    }

    /** The same design with what stops it where that is; what nothing stops ends where that is wished. */
    Assembly stopped(List<Stopping> by) {
        Lever now = lever.between(angle(by, TurningEnd.Kind.LEVER_RESTS), angle(by, TurningEnd.Kind.LEVER_PRESSED));
        CoinWorks works = coinWorks.between(
                angle(by, TurningEnd.Kind.BUCKET_RESTS), angle(by, TurningEnd.Kind.BUCKET_TIPPED), now, lever);
        List<Stop> limits = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            limits.add(stops.get(i)
                    .between(
                            by.get(LIMITS + 2 * i).angle(),
                            by.get(LIMITS + 2 * i + 1).angle()));
        }
        return new Assembly(
                name,
                workshop,
                made,
                bodies,
                pins,
                slides,
                List.copyOf(limits),
                links,
                now,
                works,
                artwork,
                rods,
                List.copyOf(by));
    }

    /** Where the ends of written stops begin, after those of lever and bucket. */
    private static final int LIMITS = 4;

    private static double angle(List<Stopping> ends, TurningEnd.Kind kind) {
        return ends.stream()
                .filter(stopping -> stopping.end().kind() == kind)
                .findFirst()
                .orElseThrow()
                .angle();
    }

    /**
     * The same design with what stops it elsewhere.
     *
     * @param gap mm by which each stands farther back from what it stops
     */
    public Assembly drawnBack(ToDoubleFunction<Stopping> gap) {
        return stopped(ends.stream()
                .map(stopping -> stopping.drawnBack(gap.applyAsDouble(stopping)))
                .toList());
    }

    /** Where a mark of lever or bucket, told at rest, lies in the position drawn. */
    public Point drawn(int body, Point atRest) {
        if (body == lever.body()) {
            return atRest.turnedAbout(lever.pivot(), -lever.rest());
        }
        return body == coinWorks.bucket() ? atRest.turnedAbout(coinWorks.pivot(), -coinWorks.rest()) : atRest;
    }
}
