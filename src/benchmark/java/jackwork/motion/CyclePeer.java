package jackwork.motion;

import jackwork.geometry.Point;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.model.Mechanism;
import jackwork.motion.time.Press;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.parts.Lever;
import jackwork.parts.Part;
import jackwork.parts.PinJoint;
import java.util.ArrayList;
import java.util.List;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.BodyFixture;
import org.dyn4j.dynamics.joint.AngleJoint;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.geometry.Circle;
import org.dyn4j.geometry.Convex;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.geometry.decompose.Bayazit;
import org.dyn4j.world.World;

/**
 * The heron with its box and a coin in dyn4j, a general physics library for games: every body, every pin, everything
 * in the coin's layer touching everything else there, outlines cut into convex pieces, its own settings but for the
 * step. No friction in pins, which it does not have.
 */
final class CyclePeer {

    /** mm of one of the peer's units. */
    private static final double UNIT = 10;

    private static final double OUTLINE = 0.05;

    private final World<Body> world = new World<>();
    private final List<Body> bodies = new ArrayList<>();
    private final Assembly assembly;
    private final Body coin = new Body();

    CyclePeer(Assembly assembly, CoinDrop drop, double step) {
        this.assembly = assembly;
        CoinWorks works = assembly.coinWorks();
        world.setGravity(new Vector2(0, -Mechanism.GRAVITY / UNIT));
        world.getSettings().setStepFrequency(step);
        world.getSettings().setAtRestDetectionEnabled(false);
        for (jackwork.parts.Body from : assembly.bodies()) {
            Body body = new Body();
            for (Part part : from.parts()) {
                if (part.ofBox() && part.layer() == works.layer()) {
                    addOutline(body, part.drawn().outerWithin(OUTLINE), drop);
                }
            }
            body.setMass(
                    from.isGround()
                            ? new Mass(new Vector2(), 0, 0)
                            : new Mass(at(from.centre()), from.mass(), from.inertia() / UNIT / UNIT));
            if (from.isGround()) {
                body.setMass(MassType.INFINITE);
            }
            bodies.add(body);
            world.addBody(body);
        }
        for (PinJoint pin : assembly.pins()) {
            world.addJoint(new RevoluteJoint<>(bodies.get(pin.holder()), bodies.get(pin.runner()), at(pin.at())));
        }
        addStop(assembly.lever().body(), assembly.lever().turn());
        addStop(works.bucket(), works.tip());
        Circle disc = new Circle(drop.radius() / UNIT);
        Point start = works.slotAt().plus(new Point(drop.offset(), 0));
        disc.translate(at(start));
        BodyFixture fixture = coin.addFixture(disc);
        fixture.setFriction(drop.friction());
        coin.setMass(new Mass(at(start), drop.mass(), drop.mass() * drop.radius() * drop.radius() / 2 / UNIT / UNIT));
        coin.setLinearVelocity(0, -drop.speed() / UNIT);
        world.addBody(coin);
    }

    private static void addOutline(Body body, List<Point> outline, CoinDrop drop) {
        List<Vector2> corners = new ArrayList<>();
        outline.forEach(corner -> corners.add(at(corner)));
        for (Convex piece : new Bayazit().decompose(corners)) {
            BodyFixture fixture = body.addFixture(piece);
            fixture.setFriction(drop.friction());
            fixture.setRestitution(drop.rebound());
        }
    }

    private void addStop(int body, double turn) {
        AngleJoint<Body> joint = new AngleJoint<>(bodies.get(0), bodies.get(body));
        joint.setLimitsEnabled(-Math.max(0, turn), -Math.min(0, turn));
        world.addJoint(joint);
    }

    private static Vector2 at(Point point) {
        return new Vector2(point.x() / UNIT, point.y() / UNIT);
    }

    /**
     * Runs for a time and presses for a part of it.
     *
     * @return how far the coin has come down, mm
     */
    double run(Press press, double pressFrom, double pressUntil, double seconds, double step) {
        Lever lever = assembly.lever();
        Body pressed = bodies.get(lever.body());
        double start = coin.getWorldCenter().y;
        int steps = (int) Math.round(seconds / step);
        for (int i = 0; i < steps; i++) {
            double time = i * step;
            if (time >= pressFrom && time < pressUntil) {
                Vector2 down = new Vector2(0, -1e6 * press.force() / UNIT);
                pressed.applyForce(down, pressed.getWorldPoint(pressed.getLocalPoint(at(lever.press()))));
            }
            world.step(1);
        }
        return UNIT * (start - coin.getWorldCenter().y);
    }
}
