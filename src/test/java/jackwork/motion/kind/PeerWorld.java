package jackwork.motion.kind;

import jackwork.geometry.Point;
import jackwork.motion.model.Mechanism;
import jackwork.parts.Assembly;
import jackwork.parts.DistanceLimit;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.PinJoint;
import jackwork.parts.SlideJoint;
import jackwork.parts.SpringLink;
import jackwork.parts.Stop;
import jackwork.parts.StringRun;
import jackwork.parts.Torque;
import jackwork.parts.TouchPair;
import java.util.ArrayList;
import java.util.List;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.BodyFixture;
import org.dyn4j.dynamics.joint.AngleJoint;
import org.dyn4j.dynamics.joint.DistanceJoint;
import org.dyn4j.dynamics.joint.PulleyJoint;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.dynamics.joint.WheelJoint;
import org.dyn4j.geometry.Circle;
import org.dyn4j.geometry.Convex;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Polygon;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.world.World;

/**
 * An assembly rebuilt in dyn4j, a general physics library for games, its lever turned by a motor at a steady speed.
 * At 100 of its units a metre, no damping, no rest. It has pins, pegs in straight slots, arcs (as a rod to their
 * centre), ring gears on fixed axles, stops, limits, straight strings and strings through two fixed eyelets, springs,
 * torques, and touches of convex outlines. It has no outer gears (its ratio must be positive), racks, cams, ratchets,
 * posts or bands, and no friction but between outlines.
 */
final class PeerWorld {

    /** mm of one of the peer's units. */
    private static final double UNIT = 10;

    private static final double MICRO = 1e6;
    private static final double UNBOUNDED = 1e12;

    private final World<Body> world = new World<>();
    private final List<Body> bodies = new ArrayList<>();
    private final List<Body> turned = new ArrayList<>();
    private final List<Double> moments = new ArrayList<>();
    private final double[] torques = new double[9];
    private int steps;
    private final Assembly assembly;
    private final double step;
    private RevoluteJoint<Body> motor;

    /**
     * @param rate strokes a second
     * @param step s
     * @throws UnsupportedOperationException when the peer does not have one of the joints
     */
    PeerWorld(Assembly assembly, double rate, double step) {
        this.assembly = assembly;
        this.step = step;
        world.setGravity(new Vector2(0, -Mechanism.GRAVITY / UNIT));
        world.getSettings().setStepFrequency(step);
        world.getSettings().setAtRestDetectionEnabled(false);
        world.getSettings().setMaximumTranslation(1e9);
        world.getSettings().setMaximumRotation(1e9);
        world.getSettings().setVelocityConstraintSolverIterations(40);
        world.getSettings().setPositionConstraintSolverIterations(20);
        world.getSettings().setLinearTolerance(1e-4);
        for (jackwork.parts.Body from : assembly.bodies()) {
            Body body = new Body();
            if (from.isGround()) {
                body.setMass(MassType.INFINITE);
            } else {
                body.setMass(new Mass(at(from.centre()), from.mass(), from.inertia() / UNIT / UNIT));
            }
            body.setLinearDamping(0);
            body.setAngularDamping(0);
            bodies.add(body);
            if (!from.equals(assembly.body(assembly.coinWorks().bucket()))) {
                world.addBody(body);
            }
        }
        int bucket = assembly.coinWorks().bucket();
        assembly.pins().stream()
                .filter(pin -> pin.runner() != bucket && pin.holder() != bucket)
                .forEach(pin -> add(pin, rate));
        assembly.slides().stream()
                .filter(slide -> slide.peg() != bucket && slide.slot() != bucket)
                .forEach(this::add);
        assembly.stops().stream()
                .filter(stop -> stop.a() != bucket && stop.b() != bucket)
                .forEach(this::add);
        assembly.links().stream()
                .filter(link -> !link.bodies().contains(bucket))
                .forEach(this::add);
    }

    private static Vector2 at(Point point) {
        return new Vector2(point.x() / UNIT, point.y() / UNIT);
    }

    private void add(PinJoint pin, double rate) {
        RevoluteJoint<Body> joint =
                new RevoluteJoint<>(bodies.get(pin.holder()), bodies.get(pin.runner()), at(pin.at()));
        if (pin.name().equals(assembly.lever().pin())) {
            joint.setMotorEnabled(true);
            joint.setMaximumMotorTorqueEnabled(true);
            joint.setMaximumMotorTorque(UNBOUNDED);
            joint.setMotorSpeed(assembly.lever().turn() * rate);
            motor = joint;
        }
        world.addJoint(joint);
    }

    private void add(SlideJoint slide) {
        Body slot = bodies.get(slide.slot());
        Body peg = bodies.get(slide.peg());
        if (slide.via() != null) {
            Point centre = jackwork.geometry.Arc.centre(slide.from(), slide.via(), slide.to());
            world.addJoint(new DistanceJoint<>(slot, peg, at(centre), at(slide.at())));
            return;
        }
        Point way = slide.to().minus(slide.from());
        WheelJoint<Body> joint = new WheelJoint<>(slot, peg, at(slide.at()), new Vector2(way.x(), way.y()));
        joint.setSpringEnabled(false);
        joint.setSpringDamperEnabled(false);
        world.addJoint(joint);
    }

    private void add(Stop stop) {
        AngleJoint<Body> joint = new AngleJoint<>(bodies.get(stop.b()), bodies.get(stop.a()));
        joint.setLimitsEnabled(stop.from(), stop.to());
        world.addJoint(joint);
    }

    private void add(Link link) {
        if (link instanceof GearMesh mesh && mesh.inside()) {
            AngleJoint<Body> joint = new AngleJoint<>(bodies.get(mesh.a()), bodies.get(mesh.b()));
            joint.setLimitsEnabled(false);
            joint.setRatio((double) mesh.gearA().teeth() / mesh.gearB().teeth());
            world.addJoint(joint);
        } else if (link instanceof StringRun string) {
            addString(string);
        } else if (link instanceof DistanceLimit limit) {
            DistanceJoint<Body> joint =
                    new DistanceJoint<>(bodies.get(limit.a()), bodies.get(limit.b()), at(limit.onA()), at(limit.onB()));
            joint.setLimitsEnabled(limit.least() / UNIT, limit.most() / UNIT);
            world.addJoint(joint);
        } else if (link instanceof SpringLink spring && !spring.pullsOnly()) {
            DistanceJoint<Body> joint = new DistanceJoint<>(
                    bodies.get(spring.a()), bodies.get(spring.b()), at(spring.onA()), at(spring.onB()));
            joint.setSpringEnabled(true);
            joint.setSpringStiffness(MICRO * spring.stiffness());
            joint.setRestDistance(spring.free() / UNIT);
            world.addJoint(joint);
        } else if (link instanceof Torque torque) {
            turned.add(bodies.get(torque.body()));
            moments.add(MICRO * torque.moment() / UNIT / UNIT);
        } else if (link instanceof TouchPair touch) {
            addTouch(touch);
        } else {
            throw new UnsupportedOperationException(link.name());
        }
    }

    private void addString(StringRun string) {
        Body a = bodies.get(string.a());
        Body b = bodies.get(string.b());
        if (string.over().isEmpty()) {
            DistanceJoint<Body> joint = new DistanceJoint<>(a, b, at(string.from()), at(string.to()));
            double length = string.from().distance(string.to()) + string.slack();
            joint.setUpperLimit(length / UNIT);
            joint.setUpperLimitEnabled(true);
            world.addJoint(joint);
            return;
        }
        boolean fixedEyelets = string.over().size() == 2
                && string.over().stream()
                        .allMatch(guide -> guide.radius() == 0
                                && assembly.body(guide.body()).isGround());
        if (!fixedEyelets) {
            throw new UnsupportedOperationException(string.name());
        }
        Point far = string.over().get(0).at();
        Point near = string.over().get(1).at();
        PulleyJoint<Body> joint = new PulleyJoint<>(a, b, at(far), at(near), at(string.from()), at(string.to()));
        joint.setSlackEnabled(true);
        joint.setLength((string.from().distance(far) + near.distance(string.to()) + string.slack()) / UNIT);
        world.addJoint(joint);
    }

    private void addTouch(TouchPair touch) {
        Convex shape = touch.radius() > 0 ? new Circle(touch.radius() / UNIT) : polygon(touch.shapeA());
        if (touch.radius() > 0) {
            shape.translate(at(touch.shapeA().get(0)));
        }
        double friction = touch.friction().coefficient().value();
        for (BodyFixture fixture : List.of(
                bodies.get(touch.a()).addFixture(shape), bodies.get(touch.b()).addFixture(polygon(touch.shapeB())))) {
            // The peer takes the geometric mean of the two frictions.
            fixture.setFriction(friction);
            fixture.setRestitution(0);
        }
    }

    private static Polygon polygon(List<Point> outline) {
        return new Polygon(outline.stream().map(PeerWorld::at).toArray(Vector2[]::new));
    }

    /** Goes on for some seconds. */
    void run(double seconds) {
        for (int i = 0; i < Math.round(seconds / step); i++) {
            for (int k = 0; k < turned.size(); k++) {
                turned.get(k).applyTorque(moments.get(k));
            }
            world.step(1, step);
            torques[steps++ % torques.length] = motor.getMotorTorque(1 / step);
        }
    }

    /**
     * Of the motor, N·mm; counter-clockwise on the lever. The median of the last steps, since the peer's slack pulley
     * jumps now and then.
     */
    double motorTorque() {
        double[] sorted = torques.clone();
        java.util.Arrays.sort(sorted);
        return sorted[sorted.length / 2] * UNIT * UNIT / MICRO;
    }

    /** Where the centre of one of the assembly's bodies is, mm. */
    Point centre(int body) {
        Vector2 centre = bodies.get(body).getWorldCenter();
        return new Point(centre.x * UNIT, centre.y * UNIT);
    }

    /** How far one of the assembly's bodies has turned, rad. */
    double angle(int body) {
        return bodies.get(body).getTransform().getRotationAngle();
    }
}
