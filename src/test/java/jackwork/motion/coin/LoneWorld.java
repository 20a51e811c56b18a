package jackwork.motion.coin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.dyn4j.collision.Filter;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.BodyFixture;
import org.dyn4j.dynamics.ContinuousDetectionMode;
import org.dyn4j.dynamics.contact.Contact;
import org.dyn4j.dynamics.contact.ContactConstraint;
import org.dyn4j.dynamics.joint.AngleJoint;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.geometry.Circle;
import org.dyn4j.geometry.Convex;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Polygon;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.geometry.decompose.SweepLine;
import org.dyn4j.world.ContactCollisionData;
import org.dyn4j.world.World;
import org.dyn4j.world.listener.ContactListenerAdapter;
import tools.jackson.databind.JsonNode;

/**
 * A coin's visit rebuilt in dyn4j, a general physics library for games, from nothing but what {@code jackwork mechanism} prints
 * (docs/mechanism.md); shares no class with the engine. Every body is there, the figure's too; a figure may have pins alone.
 *
 * <p>What the peer lacks and is given: friction of a pin is a motor that stands still, its most moment {@code friction × radius ×
 * reaction} of the last step; an end that an edge holds is a peg of the one body against a flat of the other where {@code met}
 * says, since the peer's own limits give nothing back; outlines are parted into convex pieces by its sweep line. 100 of its units
 * are a metre.
 */
final class LoneWorld {

    private static final double UNIT = 10;
    private static final double NEWTON = 1e6 / UNIT;
    private static final double PEG = 1.5;
    /** An angle that nothing comes to, rad. */
    private static final double FAR = 3;

    /**
     * How finely the peer solves: step in s, rounds a step. Few rounds pass a blow slowly on through a figure's chain of light
     * links: the lever then comes off its stop at another speed than its own rebound.
     */
    record Solver(double step, int rounds) {}

    /** What two touching things do; a name that is on no list touches nothing. */
    private record Contacting(double friction, double rebound) {}

    /** Lets a fixture touch those on its list alone. */
    private record Partners(String name, Map<String, Map<String, Contacting>> all) implements Filter {

        @Override
        public boolean isAllowed(Filter other) {
            return other instanceof Partners partners
                    && all.getOrDefault(name, Map.of()).containsKey(partners.name);
        }

        @Override
        public Partners copy() {
            return this;
        }
    }

    /**
     * Friction of a pin by its reaction in the steps before: the middle one of three, since a blow's, which is over, would rub
     * after it.
     */
    private record Rubbing(RevoluteJoint<Body> pin, double reach, double[] last) {

        void bound(double rate) {
            last[0] = last[1];
            last[1] = last[2];
            last[2] = pin.getReactionForce(rate).getMagnitude();
            double middle = Math.max(Math.min(last[0], last[1]), Math.min(Math.max(last[0], last[1]), last[2]));
            pin.setMaximumMotorTorque(reach * middle);
        }
    }

    private final JsonNode json;
    private final Solver solver;
    private final World<Body> world = new World<>();
    private final Map<String, Body> bodies = new LinkedHashMap<>();
    private final Map<String, Map<String, Contacting>> contacts = new HashMap<>();
    private final List<Rubbing> rubbing = new ArrayList<>();
    private final Set<Body> touched = new HashSet<>();
    private final LoneFinger finger;
    private final Body coin = new Body();
    private final double stillBelow;

    /**
     * @param json as printed
     * @param drop the coin, let go at once
     */
    LoneWorld(JsonNode json, LoneDrop drop, Solver solver) {
        this.json = json;
        this.solver = solver;
        this.stillBelow = number(json.get("cycle"), "stillBelow") / 10;
        if (!json.get("links").isEmpty()
                || !json.get("slides").isEmpty()
                || !json.get("stops").isEmpty()
                || number(json.get("lever"), "restDeg") != 0
                || number(json.get("coinWorks"), "restDeg") != 0) {
            throw new UnsupportedOperationException(
                    "the peer rebuilds figures of pins alone, which rest where they are drawn");
        }
        settle();
        json.get("bodies").forEach(this::addBody);
        json.get("pins").forEach(this::addPin);
        json.get("contacts").forEach(contact -> {
            boolean ofCoin = contact.get("a").stringValue().equals("coin");
            contact(
                    contact.get("a").stringValue(),
                    contact.get("b").stringValue(),
                    ofCoin ? drop.friction() : number(contact, "friction"),
                    number(contact, "rebound"));
        });
        json.get("touching").forEach(part -> {
            String name = part.get("part").stringValue();
            if (part.has("radius")) {
                Circle rod = new Circle(number(part, "radius") / UNIT);
                rod.translate(at(part.get("at")));
                fixture(body(part, "body"), rod, name);
                return;
            }
            for (Convex piece : pieces(part.get("outline"))) {
                fixture(body(part, "body"), piece, name);
            }
        });
        json.get("ends").forEach(this::addEnd);
        JsonNode press = json.get("lever").get("press");
        JsonNode way = json.get("lever").get("pressDirection");
        Body lever = body(json.get("lever"), "body");
        finger = new LoneFinger(lever, lever.getLocalPoint(at(press)), vector(way));
        world.addJoint(finger);
        addCoin(drop);
    }

    private void settle() {
        double[] gravity = array(json.get("gravity"));
        world.setGravity(new Vector2(gravity[0] / UNIT, gravity[1] / UNIT));
        world.getSettings().setStepFrequency(solver.step());
        world.getSettings().setAtRestDetectionEnabled(false);
        world.getSettings().setContinuousDetectionMode(ContinuousDetectionMode.NONE);
        world.getSettings().setMaximumTranslation(1e9);
        world.getSettings().setMaximumRotation(1e9);
        world.getSettings().setVelocityConstraintSolverIterations(solver.rounds());
        world.getSettings().setPositionConstraintSolverIterations(10);
        world.getSettings().setLinearTolerance(1e-4);
        world.addContactListener(new ContactListenerAdapter<Body>() {

            @Override
            public void begin(ContactCollisionData<Body> data, Contact contact) {
                ContactConstraint<Body> pair = data.getContactConstraint();
                if (pair.getBody1() == coin || pair.getBody2() == coin) {
                    touched.add(pair.getOtherBody(coin));
                }
            }

            @Override
            public void collision(ContactCollisionData<Body> data) {
                ContactConstraint<Body> pair = data.getContactConstraint();
                Contacting how = contacts.get(name(pair.getFixture1())).get(name(pair.getFixture2()));
                pair.setFriction(how.friction());
                pair.setRestitution(how.rebound());
                pair.setRestitutionVelocity(stillBelow / UNIT);
            }
        });
    }

    private void addBody(JsonNode from) {
        Body body = new Body();
        if (from.get("ground").booleanValue()) {
            body.setMass(MassType.INFINITE);
        } else {
            body.setMass(new Mass(at(from.get("centre")), number(from, "mass"), number(from, "inertia") / UNIT / UNIT));
        }
        undamped(body);
        bodies.put(from.get("name").stringValue(), body);
        world.addBody(body);
    }

    private static void undamped(Body body) {
        body.setLinearDamping(0);
        body.setAngularDamping(0);
    }

    private void addPin(JsonNode pin) {
        RevoluteJoint<Body> joint = new RevoluteJoint<>(body(pin, "holder"), body(pin, "runner"), at(pin.get("at")));
        joint.setMotorEnabled(true);
        joint.setCollisionAllowed(true);
        joint.setMotorSpeed(0);
        joint.setMaximumMotorTorqueEnabled(true);
        joint.setMaximumMotorTorque(0);
        rubbing.add(new Rubbing(joint, number(pin, "friction") * number(pin, "radius") / UNIT, new double[3]));
        world.addJoint(joint);
    }

    private void contact(String a, String b, double friction, double rebound) {
        Contacting how = new Contacting(friction, rebound);
        contacts.computeIfAbsent(a, k -> new HashMap<>()).put(b, how);
        contacts.computeIfAbsent(b, k -> new HashMap<>()).put(a, how);
    }

    private void fixture(Body body, Convex shape, String name) {
        BodyFixture fixture = body.addFixture(shape);
        fixture.setUserData(name);
        fixture.setFilter(new Partners(name, contacts));
    }

    private static String name(BodyFixture fixture) {
        return (String) fixture.getUserData();
    }

    /** Where {@code met} says, turned back to the drawn position; without an edge, the peer's own limit. */
    private void addEnd(JsonNode end) {
        Body body = body(end, "body");
        Body against = body(end, "against");
        double angle = Math.toRadians(number(end, "stopsAtDeg"));
        if (!end.get("heldBy").stringValue().equals("edge")) {
            AngleJoint<Body> limit = new AngleJoint<>(against, body);
            boolean counterClockwise = number(end, "sense") > 0;
            limit.setLimitsEnabled(counterClockwise ? -FAR : angle, counterClockwise ? angle : FAR);
            world.addJoint(limit);
            return;
        }
        String name = end.get("name").stringValue();
        Vector2 pivot = at(end.get("pivot"));
        Vector2 met = at(end.get("met").get("at"));
        Vector2 out = vector(end.get("met").get("push"));
        out.normalize();
        Circle peg = new Circle(PEG / UNIT);
        peg.translate(met.difference(out.product(PEG / UNIT)));
        Vector2 along = new Vector2(-out.y, out.x);
        Vector2[] flat = {
            met.difference(along.product(0.2)),
            met.sum(along.product(0.2)),
            met.sum(along.product(0.2)).add(out.product(0.3)),
            met.difference(along.product(0.2)).add(out.product(0.3))
        };
        for (Vector2 corner : flat) {
            corner.rotate(-angle, pivot);
        }
        contact(name + ", peg", name + ", flat", number(end, "friction"), number(end, "rebound"));
        fixture(against, peg, name + ", peg");
        fixture(body, polygon(flat), name + ", flat");
    }

    private void addCoin(LoneDrop drop) {
        double radius = drop.radius() / UNIT;
        coin.setMass(new Mass(new Vector2(), drop.mass(), drop.mass() * radius * radius / 2));
        undamped(coin);
        fixture(coin, new Circle(radius), "coin");
        coin.translate(at(json.get("coinWorks").get("slot").get("at")).add(drop.offset() / UNIT, 0));
        coin.setLinearVelocity(0, -drop.speed() / UNIT);
        world.addBody(coin);
    }

    private static List<Convex> pieces(JsonNode ring) {
        Vector2[] corners = new Vector2[ring.size()];
        double area = 0;
        for (int i = 0; i < corners.length; i++) {
            corners[i] = at(ring.get(i));
            area += i == 0 ? 0 : corners[i - 1].cross(corners[i]);
        }
        area += corners[corners.length - 1].cross(corners[0]);
        if (area < 0) {
            java.util.Collections.reverse(java.util.Arrays.asList(corners));
        }
        return isConvex(corners) ? List.of(new Polygon(corners)) : new SweepLine().decompose(corners);
    }

    private static boolean isConvex(Vector2[] corners) {
        int n = corners.length;
        for (int i = 0; i < n; i++) {
            Vector2 side = corners[(i + 1) % n].difference(corners[i]);
            if (side.cross(corners[(i + 2) % n].difference(corners[(i + 1) % n])) <= 0) {
                return false;
            }
        }
        return true;
    }

    private static Polygon polygon(Vector2[] corners) {
        double area = 0;
        for (int i = 0; i < corners.length; i++) {
            area += corners[i].cross(corners[(i + 1) % corners.length]);
        }
        if (area < 0) {
            java.util.Collections.reverse(java.util.Arrays.asList(corners));
        }
        return new Polygon(corners);
    }

    // In time.

    /** One step of its own length. */
    void step() {
        world.step(1, solver.step());
        for (Rubbing rubs : rubbing) {
            rubs.bound(1 / solver.step());
        }
    }

    /** @param force N, none to let go; @param speed mm/s */
    void push(double force, double speed) {
        finger.push(force * NEWTON, speed / UNIT);
    }

    /** How far a body has turned, rad. */
    double angle(String body) {
        return bodies.get(body).getTransform().getRotationAngle();
    }

    /** Where the coin's centre is, mm. */
    double[] coin() {
        return new double[] {coin.getWorldCenter().x * UNIT, coin.getWorldCenter().y * UNIT};
    }

    /** Whether the coin has touched a body so far. */
    boolean touchesBody(String name) {
        return touched.contains(bodies.get(name));
    }

    private Body body(JsonNode node, String key) {
        return bodies.get(node.get(key).stringValue());
    }

    private static Vector2 at(JsonNode point) {
        return vector(point).multiply(1 / UNIT);
    }

    private static Vector2 vector(JsonNode point) {
        return new Vector2(point.get(0).doubleValue(), point.get(1).doubleValue());
    }

    private static double[] array(JsonNode gravity) {
        return new double[] {number(gravity, "x"), number(gravity, "y")};
    }

    static double number(JsonNode node, String name) {
        return node.get(name).doubleValue();
    }
}
