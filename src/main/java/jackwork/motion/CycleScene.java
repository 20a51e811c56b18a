package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import java.util.List;

/**
 * Lever, figure, bucket and coin as one mechanism: the coin touches all that lies in its own layer, the lever's tooth
 * the bucket's strut. Lever and bucket have their stops. Immutable.
 */
final class CycleScene {

    /** Outlines are followed within this, mm. */
    private static final double OUTLINE = 0.05;

    private static final String ON_BUCKET = "coin on bucket";

    final Mechanism mechanism;
    final Assembly assembly;
    final int lever;
    final int bucket;
    final int coin;
    /** Rows of the coin on the bucket: first, and one past the last. */
    final int firstCoinOnBucket;

    final int endCoinOnBucket;

    private CycleScene(Assembly assembly, Mechanism mechanism, int[] number, int coin) {
        this.assembly = assembly;
        this.mechanism = mechanism;
        this.lever = number[assembly.lever().body()];
        this.bucket = number[assembly.coinWorks().bucket()];
        this.coin = coin;
        int first = 0;
        int end = 0;
        for (int r = 0; r < mechanism.rowCount; r++) {
            if (mechanism.what(r).equals(ON_BUCKET)) {
                first = end == 0 ? r : first;
                end = r + 1;
            }
        }
        this.firstCoinOnBucket = first;
        this.endCoinOnBucket = end;
    }

    /**
     * @param kerf by which every part is smaller than drawn, mm, half of it all round
     * @param tilt of the table in the mechanism's plane, rad, counter-clockwise
     */
    static CycleScene of(Assembly assembly, double kerf, CoinDrop drop, double tilt) {
        int[] number = new int[assembly.bodies().size()];
        MechanismBuilder builder = MechanismCompiler.builder(assembly, number, true);
        // A table turned counter-clockwise is lower on its left: seen from it, gravity turns clockwise.
        builder.gravity(new Point(0, -Mechanism.GRAVITY).turned(-tilt));
        CoinWorks works = assembly.coinWorks();
        Point start = works.slotAt().plus(new Point(drop.offset(), 0));
        int coin = builder.body("coin", drop.mass(), start, drop.mass() * drop.radius() * drop.radius() / 2);
        int lever = number[assembly.lever().body()];
        int bucket = number[works.bucket()];
        double turn = assembly.lever().turn();
        builder.stop("lever's rest", lever, Mechanism.GROUND, Math.min(0, turn), Math.max(0, turn));
        builder.stop("bucket's rest", bucket, Mechanism.GROUND, Math.min(0, works.tip()), Math.max(0, works.tip()));
        double rubbing = works.catchFriction().coefficient().value();
        List<Part> beside = assembly.parts().stream()
                .filter(part -> part.ofBox() && part.layer() == works.layer())
                .toList();
        for (Part part : beside) {
            int body = number[assembly.bodyOf(part.name())];
            String name = body == bucket ? ON_BUCKET : "coin on " + part.name();
            builder.touchDisc(
                    name,
                    coin,
                    start,
                    drop.radius(),
                    body,
                    outline(part, kerf),
                    drop.friction(),
                    body == bucket ? drop.bucketRebound() : drop.rebound());
        }
        for (Part ofLever : beside) {
            for (Part ofBucket : beside) {
                if (number[assembly.bodyOf(ofLever.name())] == lever
                        && number[assembly.bodyOf(ofBucket.name())] == bucket) {
                    builder.touch(
                            ofLever.name() + " on " + ofBucket.name(),
                            lever,
                            outline(ofLever, kerf),
                            bucket,
                            outline(ofBucket, kerf),
                            rubbing,
                            LinkCompiler.WOOD_ON_WOOD);
                }
            }
        }
        return new CycleScene(assembly, builder.build(), number, coin);
    }

    private static List<Point> outline(Part part, double kerf) {
        return part.drawn().offset(-kerf / 2).outerWithin(OUTLINE);
    }
}
