package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import java.util.function.IntPredicate;

/**
 * Lever, figure, bucket and coin as one mechanism: the coin touches all that lies in its own layer, the lever's tooth
 * the bucket's strut. Lever and bucket have their stops. A figure that can be is folded into the lever. Immutable.
 */
final class CycleScene {

    private static final String ON_BUCKET = "coin on bucket";

    final Mechanism mechanism;
    final Assembly assembly;
    private final CycleRig rig;
    /** Of each of the assembly's bodies here, {@link Mechanism#GROUND} for the ground and for what is folded. */
    private final int[] number;

    final int lever;
    final int bucket;
    final int coin;
    /** Rows of the coin on the bucket: first, and one past the last. */
    final int firstCoinOnBucket;

    final int endCoinOnBucket;

    private CycleScene(CycleRig rig, Mechanism mechanism, int[] number, int coin) {
        this.rig = rig;
        this.assembly = rig.assembly;
        this.number = number;
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

    static CycleScene of(CycleRig rig, CoinDrop drop) {
        Assembly assembly = rig.assembly;
        CoinWorks works = assembly.coinWorks();
        int[] number = new int[assembly.bodies().size()];
        boolean folds = rig.figure.isPresent();
        IntPredicate kept = body -> !folds || body == assembly.lever().body() || body == works.bucket();
        MechanismBuilder builder = MechanismCompiler.builder(assembly, number, kept, true);
        builder.gravity(rig.gravity);
        rig.figure.ifPresent(builder::folded);
        Point start = works.slotAt().plus(new Point(drop.offset(), 0));
        int coin = builder.body("coin", drop.mass(), start, drop.mass() * drop.radius() * drop.radius() / 2);
        int lever = number[assembly.lever().body()];
        int bucket = number[works.bucket()];
        double turn = assembly.lever().turn();
        builder.stop("lever's rest", lever, Mechanism.GROUND, Math.min(0, turn), Math.max(0, turn));
        builder.stop("bucket's rest", bucket, Mechanism.GROUND, Math.min(0, works.tip()), Math.max(0, works.tip()));
        double rubbing = works.catchFriction().coefficient().value();
        rig.outlines.forEach((part, outline) -> {
            int body = number[assembly.bodyOf(part.name())];
            String name = body == bucket ? ON_BUCKET : "coin on " + part.name();
            double rebound = body == bucket ? drop.bucketRebound() : drop.rebound();
            builder.touchDisc(name, coin, start, drop.radius(), body, outline, drop.friction(), rebound);
        });
        rig.outlines.forEach((ofLever, leverOutline) -> rig.outlines.forEach((ofBucket, bucketOutline) -> {
            if (number[assembly.bodyOf(ofLever.name())] == lever
                    && number[assembly.bodyOf(ofBucket.name())] == bucket) {
                builder.touch(
                        ofLever.name() + " on " + ofBucket.name(),
                        lever,
                        leverOutline,
                        bucket,
                        bucketOutline,
                        rubbing,
                        LinkCompiler.WOOD_ON_WOOD);
            }
        }));
        return new CycleScene(rig, builder.build(), number, coin);
    }

    /**
     * Spreads a pose of the scene over the whole piece.
     *
     * @param into x, y and angle of each of the assembly's bodies but the ground, in their order, then of the coin
     */
    void spread(double[] pose, double[] into) {
        double stroke = pose[3 * lever + 2];
        for (int body = 1; body < number.length; body++) {
            int at = 3 * (body - 1);
            if (number[body] >= 0) {
                System.arraycopy(pose, 3 * number[body], into, at, 3);
            } else {
                rig.figure.orElseThrow().pose(body, stroke, into, at);
            }
        }
        System.arraycopy(pose, 3 * coin, into, 3 * (number.length - 1), 3);
    }
}
