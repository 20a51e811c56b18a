package jackwork.parts;

import jackwork.design.BoxFile;
import jackwork.design.CoinWorksEntry;
import jackwork.design.Design;
import jackwork.design.Named;
import jackwork.design.PinEntry;
import jackwork.geometry.Point;
import jackwork.stock.FrictionPair;
import jackwork.stock.Rods;
import java.util.List;
import java.util.Map;

/** Resolves lever and coin works of a box. */
final class CoinWorksMaker {

    private CoinWorksMaker() {}

    static Lever lever(Design design, Map<String, Integer> bodyOf) {
        BoxFile box = design.box();
        String pinName = box.lever().pin();
        Point pivot = design.inBox(Named.in(box.works().pins(), pinName).at(), pinName);
        Point press = design.inBox(box.lever().press(), "");
        double sense = leverSense(design);
        int body = Named.in(bodyOf, box.lever().part());
        return new Lever(
                body,
                pinName,
                pivot,
                press,
                0,
                sense * Math.toRadians(TurningEnd.wished(box.lever().turn())));
    }

    /** A finger pushing down turns the lever clockwise when it pushes right of the pivot. */
    static double leverSense(Design design) {
        BoxFile box = design.box();
        String pin = box.lever().pin();
        Point pivot = design.inBox(Named.in(box.works().pins(), pin).at(), pin);
        return design.inBox(box.lever().press(), "").x() > pivot.x() ? -1 : 1;
    }

    static CoinWorks make(Design design, Map<String, Integer> bodyOf, List<Body> bodies) {
        BoxFile box = design.box();
        CoinWorksEntry entry = box.coinWorks();
        CoinWorksEntry.Bucket bucket = entry.bucket();
        PinEntry pin = Named.in(box.works().pins(), bucket.pin());
        Point pivot = design.inBox(pin.at(), bucket.pin());
        Point toe = design.inBox(bucket.toe(), "");
        Point heel = design.inBox(bucket.heel(), "");
        double sense = bucketSense(design);
        int body = Named.in(bodyOf, bucket.part());
        double reach = bodies.get(body).parts().stream()
                .flatMap(part -> part.drawn().outer().stream())
                .mapToDouble(pivot::distance)
                .max()
                .orElse(0);
        String rodSurface = Rods.catalogue()
                .find(Named.in(design.workshop().rods(), pin.rod()).kind())
                .orElseThrow()
                .surface();
        String wood = bodies.get(body).parts().get(0).kind().surface();
        String leverSurface = bodies.get(Named.in(bodyOf, box.lever().part()))
                .parts()
                .get(0)
                .kind()
                .surface();
        FrictionPair bearing = Friction.between(design.workshop(), rodSurface, wood);
        return new CoinWorks(
                design.inBox(entry.slot().at(), ""),
                entry.slot().length(),
                entry.slot().width(),
                body,
                Named.in(box.works().parts(), bucket.part()).layer(),
                bucket.pin(),
                pivot,
                0,
                sense * Math.toRadians(TurningEnd.wished(bucket.tip())),
                heel,
                bucket.rise() == null ? null : design.inBox(bucket.rise(), ""),
                toe,
                design.inBox(bucket.lip(), ""),
                Named.in(design.workshop().rods(), pin.rod()).diameter().value() / 2,
                bucket.sideGap(),
                reach,
                bucket.rebound() == null ? design.workshop().handlingOrGuess().rebound() : bucket.rebound(),
                bearing,
                Friction.between(design.workshop(), leverSurface, wood),
                Friction.between(design.workshop(), "coin", wood),
                design.inBox(entry.holds().tooth(), ""),
                design.inBox(entry.holds().strut(), ""),
                design.inBox(entry.kicker(), ""),
                entry.bridge() == null ? null : design.inBox(entry.bridge().face(), ""),
                entry.cashRoom());
    }

    /** The way in which the coin turns it: by its weight, or pressed by the kicker. */
    static double bucketSense(Design design) {
        CoinWorksEntry entry = design.box().coinWorks();
        String pin = entry.bucket().pin();
        Point pivot = design.inBox(Named.in(design.box().works().pins(), pin).at(), pin);
        Point toe = design.inBox(entry.bucket().toe(), "");
        CoinWorksEntry.Bridge bridge = entry.bridge();
        if (bridge == null) {
            // A coin left of the pivot turns it counter-clockwise.
            return toe.x() < pivot.x() ? 1 : -1;
        }
        Point face = design.inBox(bridge.face(), "");
        return face.minus(pivot).cross(face.minus(design.inBox(entry.kicker(), ""))) > 0 ? 1 : -1;
    }
}
