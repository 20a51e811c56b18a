package jackwork.motion.coin;

import jackwork.geometry.Point;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import jackwork.motion.model.MechanismCompiler;
import jackwork.motion.model.MechanismKind;
import jackwork.motion.model.Rows;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Part;
import jackwork.parts.Stopping;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Lever, figure, bucket and coins as one mechanism: a coin touches all that lies in its own layer, the lever's tooth
 * the bucket's strut. Lever and bucket have what stops them. A figure that can be is folded into the lever. Immutable.
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
    /** Each coin's body, in the order of the visit. */
    final int[] coins;
    /** Whether a row is of a coin on the bucket, [rows]. */
    final boolean[] onBucket;

    private CycleScene(CycleRig rig, Mechanism mechanism, int[] number, int[] coins) {
        this.rig = rig;
        this.assembly = rig.assembly;
        this.number = number;
        this.mechanism = mechanism;
        this.lever = number[assembly.lever().body()];
        this.bucket = number[assembly.coinWorks().bucket()];
        this.coins = coins;
        this.onBucket = new boolean[mechanism.rowCount];
        for (int r = 0; r < mechanism.rowCount; r++) {
            onBucket[r] = mechanism.what(r).equals(ON_BUCKET);
        }
    }

    static CycleScene of(CycleRig rig, List<CoinDrop> drops) {
        Assembly assembly = rig.assembly;
        CoinWorks works = assembly.coinWorks();
        int[] number = new int[assembly.bodies().size()];
        boolean folds = rig.figure.isPresent();
        IntPredicate kept = body -> !folds || body == assembly.lever().body() || body == works.bucket();
        MechanismBuilder builder = MechanismCompiler.builder(assembly, number, kept, true);
        builder.gravity(rig.gravity).stiction(rig.circumstances.stiction());
        rig.figure.ifPresent(builder::folded);
        int[] coins = new int[drops.size()];
        for (int i = 0; i < coins.length; i++) {
            CoinDrop drop = drops.get(i);
            double inertia = drop.mass() * drop.radius() * drop.radius() / 2;
            coins[i] = builder.body("coin", drop.mass(), letGo(works, drop), inertia);
        }
        int lever = number[assembly.lever().body()];
        int bucket = number[works.bucket()];
        for (Stopping stopping : assembly.ends()) {
            if (!stopping.end().isWritten()) {
                MechanismCompiler.end(builder, assembly, stopping, number, rig.circumstances.stopRebound());
            }
        }
        double rubbing = works.catchFriction().coefficient().value();
        for (Part part : rig.coinTouches()) {
            List<Point> outline = rig.outline(part);
            int body = number[assembly.bodyOf(part.name())];
            String name = body == bucket ? ON_BUCKET : "coin on " + part.name();
            for (int i = 0; i < coins.length; i++) {
                CoinDrop drop = drops.get(i);
                double rebound = body == bucket ? drop.bucketRebound() : drop.rebound();
                builder.touchDisc(
                        name, coins[i], letGo(works, drop), drop.radius(), body, outline, drop.friction(), rebound);
            }
        }
        for (CycleRig.Rod rod : rig.coinRods()) {
            int body = number[rod.body()];
            String name = body == bucket ? ON_BUCKET : "coin on " + rod.name();
            for (int i = 0; i < coins.length; i++) {
                CoinDrop drop = drops.get(i);
                double rebound = body == bucket ? drop.bucketRebound() : drop.rebound();
                builder.touchDiscs(
                        name,
                        coins[i],
                        letGo(works, drop),
                        drop.radius(),
                        body,
                        rod.at(),
                        rod.radius(),
                        drop.friction(),
                        rebound);
            }
        }
        for (int i = 1; i < coins.length; i++) {
            for (int k = 0; k < i; k++) {
                CoinDrop one = drops.get(k);
                CoinDrop other = drops.get(i);
                builder.touchDiscs(
                        "coin on coin",
                        coins[k],
                        letGo(works, one),
                        one.radius(),
                        coins[i],
                        letGo(works, other),
                        other.radius(),
                        CoinLimits.COIN_ON_COIN,
                        Math.min(one.rebound(), other.rebound()));
            }
        }
        for (CycleRig.Pair pair : rig.catchTouches()) {
            builder.touch(
                    name(pair),
                    lever,
                    rig.outline(pair.ofLever()),
                    bucket,
                    rig.outline(pair.ofBucket()),
                    rubbing,
                    MechanismKind.WOOD_ON_WOOD);
        }
        return new CycleScene(rig, builder.build(), number, coins);
    }

    /** The least way between lever and bucket as they rest, mm; negative where one is in the other, infinite where nothing is near. */
    double catchRoom() {
        Rows rows = new Rows(mechanism);
        rows.at(restPose());
        double least = Double.POSITIVE_INFINITY;
        for (int r = 0; r < rows.count; r++) {
            for (CycleRig.Pair pair : rig.catchTouches()) {
                if (mechanism.what(r).equals(name(pair))) {
                    least = Math.min(least, rows.gap[r]);
                }
            }
        }
        return least;
    }

    private static String name(CycleRig.Pair pair) {
        return pair.ofLever().name() + " on " + pair.ofBucket().name();
    }

    /** Where a coin is let go. */
    static Point letGo(CoinWorks works, CoinDrop drop) {
        return works.slotAt().plus(new Point(drop.offset(), 0));
    }

    /** The pose at rest: as drawn, but for what strings pull elsewhere. */
    double[] restPose() {
        double[] pose = mechanism.drawnPose();
        CoinWorks works = assembly.coinWorks();
        turn(pose, lever, assembly.lever().pivot(), assembly.lever().rest());
        turn(pose, bucket, works.pivot(), works.rest());
        rig.rest.ifPresent(rest -> {
            for (int body = 1; body < number.length; body++) {
                int at = 3 * (body - 1);
                if (number[body] >= 0 && !Double.isNaN(rest[at])) {
                    System.arraycopy(rest, at, pose, 3 * number[body], 3);
                }
            }
        });
        return pose;
    }

    private static void turn(double[] pose, int body, Point pivot, double angle) {
        Point centre = new Point(pose[3 * body], pose[3 * body + 1]).turnedAbout(pivot, angle);
        pose[3 * body] = centre.x();
        pose[3 * body + 1] = centre.y();
        pose[3 * body + 2] += angle;
    }

    /**
     * Spreads a pose of the scene over the whole piece.
     *
     * @param into x, y and angle of each of the assembly's bodies but the ground, in their order, then of the coins
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
        for (int i = 0; i < coins.length; i++) {
            System.arraycopy(pose, 3 * coins[i], into, 3 * (number.length - 1 + i), 3);
        }
    }
}
