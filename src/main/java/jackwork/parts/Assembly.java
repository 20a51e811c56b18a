package jackwork.parts;

import jackwork.design.WorkshopFile;
import jackwork.stock.FrictionPair;
import java.util.List;

/**
 * A design put together in the position drawn. Bodies are numbered by their place in the list;
 * number 0 is the ground.
 *
 * @param bodies the ground first
 * @param links gears, cams, strings and all other joints
 * @param artwork what is printed for it
 * @param pins between different bodies; dowels within one body hold but do not turn
 */
public record Assembly(
        String name,
        WorkshopFile workshop,
        List<Body> bodies,
        List<PinJoint> pins,
        List<SlideJoint> slides,
        List<Stop> stops,
        List<Link> links,
        Lever lever,
        CoinWorks coinWorks,
        Artwork artwork) {

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
        return new Assembly(name, workshop, other, pins, slides, stops, links, lever, coinWorks, artwork);
    }

    /** Its links of one kind. */
    public <L extends Link> List<L> links(Class<L> kind) {
        return links.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The same design with other links. */
    Assembly withLinks(List<Link> other) {
        return new Assembly(name, workshop, bodies, pins, slides, stops, other, lever, coinWorks, artwork);
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
                bodies,
                changedPins,
                changedSlides,
                stops,
                changedLinks,
                lever,
                coinWorks.rubbing(pair, other),
                artwork);
    }
}
