package jackwork.motion.rest;

import jackwork.motion.Elimination;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Statics with friction of a mechanism from its JSON alone: shares no code with the program. Poses by Newton's method on
 * gaps, their gradients by central differences; what strings, stops and cams bear by trying every set of them; friction
 * put in by turns until it stays, in the sense in which things slide from a pose a little within the stroke. Slow, short.
 */
final class LoneStatics {

    /** Finger's force, N: from the least to the most that friction of pins that stand still leaves open. */
    record Range(double least, double most) {}

    /** What holds: a gap, and the wrench on all bodies of a unit of its force. */
    private interface Bond {

        double gap(double[] q);

        default double[] wrench(double[] q) {
            return gradient(this::gap, q);
        }

        /** Wrench of friction (and of what else goes with it) by a force. */
        default double[] rubbing(double[] q, double force, double[] slid) {
            return new double[q.length];
        }
    }

    private static final double GRAVITY = 9.80665e-3;
    private static final double WITHIN = 1e-3;
    private static final double STILL = 1e-11;

    private final JsonNode root;
    private final List<JsonNode> bodies = new ArrayList<>();
    private final double[] drawn;
    private final List<Bond> always = new ArrayList<>();
    private final List<Bond> pushing = new ArrayList<>();

    LoneStatics(String json) {
        root = JsonMapper.builder().build().readTree(json);
        String bucket = root.get("bucket").stringValue();
        for (JsonNode body : root.get("bodies")) {
            if (!body.get("ground").booleanValue()
                    && !body.get("name").stringValue().equals(bucket)) {
                bodies.add(body);
            }
        }
        drawn = new double[3 * bodies.size()];
        for (int b = 0; b < bodies.size(); b++) {
            drawn[3 * b] = bodies.get(b).get("centre").get(0).doubleValue();
            drawn[3 * b + 1] = bodies.get(b).get("centre").get(1).doubleValue();
        }
        for (JsonNode pin : root.get("pins")) {
            if (!pin.get("runner").stringValue().equals(bucket)) {
                always.add(new PinBond(pin, 0));
                always.add(new PinBond(pin, 1));
            }
        }
        root.get("slides").forEach(slide -> always.add(new SlideBond(slide)));
        for (JsonNode stop : root.get("stops")) {
            for (int side : new int[] {1, -1}) {
                String limit = side > 0 ? "fromDeg" : "toDeg";
                pushing.add(q -> side * (turned(stop, "a", q) - turned(stop, "b", q) - radians(stop, limit)));
            }
        }
        for (JsonNode link : root.get("links")) {
            switch (link.get("kind").stringValue()) {
                case "rack" -> always.add(new RackBond(link));
                case "cam" -> pushing.add(new CamBond(link));
                case "string" -> pushing.add(new StringBond(link));
                default -> throw new IllegalArgumentException("not covered: " + link.get("kind"));
            }
        }
    }

    /** @param sense 1 pressing, −1 returning */
    Range finger(double stroke, int sense) {
        double other = stroke == 0 ? WITHIN : stroke - WITHIN;
        for (List<Bond> bearing : sets()) {
            double[] here = pose(stroke, bearing);
            double[] there = pose(other, bearing);
            if (here == null || there == null || !fits(here, bearing)) {
                continue;
            }
            double[] slid = new double[here.length];
            for (int c = 0; c < slid.length; c++) {
                slid[c] = sense * Math.signum(other - stroke) * (there[c] - here[c]);
            }
            Range range = range(here, slid, bearing);
            if (range != null) {
                return range;
            }
        }
        throw new IllegalStateException("nothing balances at " + stroke);
    }

    /** As many of what only pushes as leave nothing free. */
    private List<List<Bond>> sets() {
        int wanted = drawn.length - 1 - always.size();
        List<List<Bond>> sets = new ArrayList<>();
        for (int bits = 0; bits < 1 << pushing.size(); bits++) {
            if (Integer.bitCount(bits) == wanted) {
                List<Bond> set = new ArrayList<>();
                for (int i = 0; i < pushing.size(); i++) {
                    if ((bits >> i & 1) == 1) {
                        set.add(pushing.get(i));
                    }
                }
                sets.add(set);
            }
        }
        return sets;
    }

    private boolean fits(double[] q, List<Bond> bearing) {
        return pushing.stream().allMatch(bond -> bearing.contains(bond) || bond.gap(q) > -1e-9);
    }

    private double[] pose(double stroke, List<Bond> bearing) {
        double[] q = drawn.clone();
        JsonNode lever = root.get("lever");
        int at = 3 * body(lever.get("body").stringValue()) + 2;
        List<Bond> bonds = new ArrayList<>(always);
        bonds.addAll(bearing);
        int steps = 20;
        for (int k = 1; k <= steps; k++) {
            double angle = radians(lever, "throwDeg") * stroke * k / steps;
            double miss = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 30 && miss > 1e-13; i++) {
                double[][] a = new double[q.length][];
                for (int r = 0; r < bonds.size(); r++) {
                    a[r] = Arrays.copyOf(gradient(bonds.get(r)::gap, q), q.length + 1);
                    a[r][q.length] = -bonds.get(r).gap(q);
                }
                a[q.length - 1] = new double[q.length + 1];
                a[q.length - 1][at] = 1;
                a[q.length - 1][q.length] = angle - q[at];
                double[] step = Elimination.solved(a);
                miss = 0;
                for (int c = 0; c < q.length; c++) {
                    q[c] += step[c];
                    miss = Math.max(miss, Math.abs(step[c]));
                }
            }
            if (!(miss < 1e-9)) {
                return null;
            }
        }
        return q;
    }

    /** Over both ends of the friction of every pin that stands still; null where something would have to pull. */
    private Range range(double[] q, double[] slid, List<Bond> bearing) {
        List<PinBond> still = new ArrayList<>();
        for (Bond bond : always) {
            if (bond instanceof PinBond pin && pin.axis == 0) {
                pin.standing = 0;
                if (Math.abs(pin.slid(slid)) < STILL) {
                    still.add(pin);
                }
            }
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int bits = 0; bits < 1 << still.size(); bits++) {
            for (int i = 0; i < still.size(); i++) {
                still.get(i).standing = (bits >> i & 1) == 1 ? 1 : -1;
            }
            double[] forces = forces(q, slid, bearing);
            for (int i = 0; i < bearing.size(); i++) {
                if (forces[always.size() + i] < 0) {
                    return null;
                }
            }
            least = Math.min(least, forces[q.length - 1]);
            most = Math.max(most, forces[q.length - 1]);
        }
        return new Range(least, most);
    }

    private double[] forces(double[] q, double[] slid, List<Bond> bearing) {
        List<Bond> bonds = new ArrayList<>(always);
        bonds.addAll(bearing);
        int n = q.length;
        double[][] columns = new double[n][];
        for (int j = 0; j < bonds.size(); j++) {
            columns[j] = bonds.get(j).wrench(q);
        }
        JsonNode lever = root.get("lever");
        double[] press = at(lever.get("body").stringValue(), lever.get("press"), q);
        columns[n - 1] = new double[n];
        push(columns[n - 1], lever.get("body").stringValue(), press, array(lever.get("pressDirection")), 1, q);
        double[] forces = new double[n];
        for (int turn = 0; turn < 400; turn++) {
            double[] load = new double[n];
            for (int b = 0; b < bodies.size(); b++) {
                load[3 * b + 1] = -bodies.get(b).get("mass").doubleValue() * GRAVITY;
            }
            for (int j = 0; j < bonds.size(); j++) {
                // A pin's two forces bear on it together.
                boolean first = bonds.get(j) instanceof PinBond pin && pin.axis == 0;
                double force = first ? Math.hypot(forces[j], forces[j + 1]) : forces[j];
                double[] rubbing = bonds.get(j).rubbing(q, force, slid);
                for (int c = 0; c < n; c++) {
                    load[c] += rubbing[c];
                }
            }
            double[][] a = new double[n][n + 1];
            for (int c = 0; c < n; c++) {
                for (int j = 0; j < n; j++) {
                    a[c][j] = columns[j][c];
                }
                a[c][n] = -load[c];
            }
            double[] next = Elimination.solved(a);
            double moved = 0;
            for (int j = 0; j < n; j++) {
                moved = Math.max(moved, Math.abs(next[j] - forces[j]));
            }
            forces = next;
            if (moved < 1e-14) {
                return forces;
            }
        }
        throw new IllegalStateException("friction does not settle");
    }

    // Joints.

    private final class PinBond implements Bond {

        private final JsonNode pin;
        private final int axis;
        private final String holder;
        private final String runner;
        /** Sense of the friction of a pin that stands still. */
        private int standing;

        PinBond(JsonNode pin, int axis) {
            this.pin = pin;
            this.axis = axis;
            this.holder = pin.get("holder").stringValue();
            this.runner = pin.get("runner").stringValue();
        }

        @Override
        public double gap(double[] q) {
            return at(runner, pin.get("at"), q)[axis] - at(holder, pin.get("at"), q)[axis];
        }

        double slid(double[] slid) {
            return angle(runner, slid) - angle(holder, slid);
        }

        @Override
        public double[] rubbing(double[] q, double force, double[] slid) {
            double[] wrench = new double[q.length];
            if (axis == 0) {
                double sense = Math.abs(slid(slid)) < STILL ? standing : -Math.signum(slid(slid));
                double moment = sense * number(pin, "friction") * number(pin, "radius") * force;
                turn(wrench, runner, moment);
                turn(wrench, holder, -moment);
            }
            return wrench;
        }
    }

    private final class SlideBond implements Bond {

        private final JsonNode slide;
        private final String peg;
        private final String slot;

        SlideBond(JsonNode slide) {
            if (!slide.get("via").isNull()) {
                throw new IllegalArgumentException("a bent slide is not covered");
            }
            this.slide = slide;
            this.peg = slide.get("peg").stringValue();
            this.slot = slide.get("slot").stringValue();
        }

        private double[] way(double[] q) {
            double[] way = minus(at(slot, slide.get("to"), q), at(slot, slide.get("from"), q));
            double length = Math.hypot(way[0], way[1]);
            return new double[] {way[0] / length, way[1] / length};
        }

        @Override
        public double gap(double[] q) {
            double[] way = way(q);
            double[] from = minus(at(peg, slide.get("at"), q), at(slot, slide.get("from"), q));
            return way[0] * from[1] - way[1] * from[0];
        }

        private double along(double[] q) {
            double[] way = way(q);
            double[] from = minus(at(peg, slide.get("at"), q), at(slot, slide.get("from"), q));
            return way[0] * from[0] + way[1] * from[1];
        }

        @Override
        public double[] rubbing(double[] q, double force, double[] slid) {
            double[] moved = q.clone();
            for (int c = 0; c < q.length; c++) {
                moved[c] += slid[c];
            }
            double sense = -Math.signum(along(moved) - along(q));
            double[] wrench = new double[q.length];
            double[] place = at(peg, slide.get("at"), q);
            double size = sense * number(slide, "friction") * Math.abs(force);
            push(wrench, peg, place, way(q), size, q);
            push(wrench, slot, place, way(q), -size, q);
            return wrench;
        }
    }

    /** A gear that rolls on a bar: its tangential force at the pitch point, teeth that drive apart and rub. */
    private final class RackBond implements Bond {

        private final JsonNode rack;
        private final String gear;
        private final String bar;
        private final double radius;

        RackBond(JsonNode rack) {
            this.rack = rack;
            this.gear = rack.get("bodies").get(0).stringValue();
            this.bar = rack.get("bodies").get(1).stringValue();
            this.radius = number(rack, "module") * number(rack, "teeth") / 2;
        }

        private double[] toward(double[] q) {
            double[] toward = minus(array(rack.get("pitchPoint")), array(rack.get("centre")));
            return turned(toward, angle(bar, q), 1 / radius);
        }

        @Override
        public double gap(double[] q) {
            double[] toward = toward(q);
            double[] along = {-toward[1], toward[0]};
            double[] from = minus(at(gear, rack.get("centre"), q), at(bar, rack.get("pitchPoint"), q));
            return radius * (angle(gear, q) - angle(bar, q)) + along[0] * from[0] + along[1] * from[1];
        }

        @Override
        public double[] rubbing(double[] q, double force, double[] slid) {
            double[] wrench = new double[q.length];
            double[] toward = toward(q);
            double[] centre = at(gear, rack.get("centre"), q);
            double[] place = {centre[0] + radius * toward[0], centre[1] + radius * toward[1]};
            double apart = Math.tan(radians(rack, "pressureAngleDeg")) * Math.abs(force);
            push(wrench, gear, place, toward, -apart, q);
            push(wrench, bar, place, toward, apart, q);
            double arm = Math.PI * number(rack, "module") / 4;
            double sense = -Math.signum(angle(gear, slid) - angle(bar, slid));
            turn(wrench, gear, sense * number(rack, "friction") * arm * Math.abs(force));
            turn(wrench, bar, -sense * number(rack, "friction") * arm * Math.abs(force));
            return wrench;
        }
    }

    /** A follower that swings as its cam's law says; the push goes along the normal of the pitch curve. */
    private final class CamBond implements Bond {

        private final JsonNode cam;
        private final String follower;
        private final String disc;

        CamBond(JsonNode cam) {
            this.cam = cam;
            this.follower = cam.get("bodies").get(0).stringValue();
            this.disc = cam.get("bodies").get(1).stringValue();
        }

        private double swing(double turned) {
            double left = Math.toDegrees(turned) % 360;
            left = left < 0 ? left + 360 : left;
            double swung = 0;
            for (JsonNode piece : cam.get("motion")) {
                double turn = number(piece, "turnDeg");
                if (left <= turn) {
                    return Math.toRadians(
                            swung + number(piece, "move") * law(piece.get("law").stringValue(), left / turn));
                }
                left -= turn;
                swung += number(piece, "move");
            }
            return Math.toRadians(swung);
        }

        /** Norton, Cam Design and Manufacturing Handbook. */
        private static double law(String name, double x) {
            double pi = Math.PI;
            return switch (name) {
                case "harmonic" -> (1 - Math.cos(pi * x)) / 2;
                case "3-4-5" -> 10 * Math.pow(x, 3) - 15 * Math.pow(x, 4) + 6 * Math.pow(x, 5);
                case "modified-sine" ->
                    x < 0.125
                            ? (pi * x - Math.sin(4 * pi * x) / 4) / (4 + pi)
                            : x < 0.875
                                    ? (2 + pi * x - 9.0 / 4 * Math.sin(4 * pi * x / 3 + pi / 3)) / (4 + pi)
                                    : (4 + pi * x - Math.sin(4 * pi * x) / 4) / (4 + pi);
                default -> throw new IllegalArgumentException("not covered: " + name);
            };
        }

        @Override
        public double gap(double[] q) {
            return swing(angle(disc, q)) - angle(follower, q);
        }

        /** Outward from the cam where the follower touches, of unit length. */
        private double[] normal(double[] q) {
            double step = 1e-5;
            double[] before = pegSeenFromCam(angle(disc, q) - step);
            double[] after = pegSeenFromCam(angle(disc, q) + step);
            double[] way = turned(minus(after, before), angle(disc, q), 1);
            double length = Math.hypot(way[0], way[1]);
            double[] normal = {way[1] / length, -way[0] / length};
            double[] out = minus(at(follower, cam.get("peg"), q), at(disc, cam.get("centre"), q));
            double side = Math.signum(normal[0] * out[0] + normal[1] * out[1]);
            return new double[] {side * normal[0], side * normal[1]};
        }

        private double[] pegSeenFromCam(double turned) {
            double[] pivot = array(cam.get("swingsAbout"));
            double[] arm = turned(minus(array(cam.get("peg")), pivot), swing(turned), 1);
            double[] centre = array(cam.get("centre"));
            return turned(minus(new double[] {pivot[0] + arm[0], pivot[1] + arm[1]}, centre), -turned, 1);
        }

        private double[] touch(double[] q) {
            double[] peg = at(follower, cam.get("peg"), q);
            double[] normal = normal(q);
            double radius = number(cam, "radius");
            return new double[] {peg[0] - radius * normal[0], peg[1] - radius * normal[1]};
        }

        @Override
        public double[] wrench(double[] q) {
            double[] wrench = new double[q.length];
            push(wrench, follower, touch(q), normal(q), 1, q);
            push(wrench, disc, touch(q), normal(q), -1, q);
            return wrench;
        }

        @Override
        public double[] rubbing(double[] q, double force, double[] slid) {
            double[] normal = normal(q);
            double[] along = {-normal[1], normal[0]};
            double[] touch = touch(q);
            double sense = -Math.signum(rate(follower, touch, along, q, slid) - rate(disc, touch, along, q, slid));
            double[] wrench = new double[q.length];
            push(wrench, follower, touch, along, sense * number(cam, "friction") * force, q);
            push(wrench, disc, touch, along, -sense * number(cam, "friction") * force, q);
            return wrench;
        }

        private double rate(String name, double[] place, double[] along, double[] q, double[] slid) {
            double[] unit = new double[q.length];
            push(unit, name, place, along, 1, q);
            double rate = 0;
            for (int c = 0; c < q.length; c++) {
                rate += unit[c] * slid[c];
            }
            return rate;
        }
    }

    /** A string between two bodies over posts of the box. */
    private final class StringBond implements Bond {

        private final JsonNode string;
        private final String first;
        private final String last;
        private final double length;

        StringBond(JsonNode string) {
            this.string = string;
            this.first = string.get("bodies").get(0).stringValue();
            this.last = string.get("bodies").get(1).stringValue();
            for (JsonNode guide : string.get("over")) {
                if (isBody(guide.get("body").stringValue())
                        || guide.get("wholeTurns").intValue() > 0) {
                    throw new IllegalArgumentException("a post that moves, or whole turns, are not covered");
                }
            }
            this.length = number(string, "slack") - gap(drawn);
        }

        /** Points of touch, two a post, from end to end. */
        private double[][] touches(double[] q) {
            int posts = string.get("over").size();
            double[][] places = new double[2 * posts + 2][];
            double[] before = at(first, string.get("from"), q);
            double radius = 0;
            places[0] = before;
            for (int k = 0; k <= posts; k++) {
                boolean end = k == posts;
                JsonNode post = end ? null : string.get("over").get(k);
                double[] centre = end ? at(last, string.get("to"), q) : array(post.get("at"));
                double other = end ? 0 : side(post) * number(post, "radius");
                double[] way = minus(centre, before);
                double distance = Math.hypot(way[0], way[1]);
                // Leaving a post on its left the string is right of the line of centres by the difference of radii.
                double lean = Math.asin((other - radius) / distance);
                double[] u = turned(way, -lean, 1 / distance);
                places[2 * k] = new double[] {before[0] + radius * u[1], before[1] - radius * u[0]};
                places[2 * k + 1] = new double[] {centre[0] + other * u[1], centre[1] - other * u[0]};
                before = centre;
                radius = other;
            }
            return places;
        }

        private static int side(JsonNode post) {
            return post.get("turns").stringValue().equals("left") ? 1 : -1;
        }

        /** Angle of touch on a post. */
        private double wrap(double[][] touches, int post) {
            double[] in = minus(touches[2 * post + 1], touches[2 * post]);
            double[] out = minus(touches[2 * post + 3], touches[2 * post + 2]);
            double turn = Math.atan2(in[0] * out[1] - in[1] * out[0], in[0] * out[0] + in[1] * out[1]);
            return side(string.get("over").get(post)) * turn;
        }

        @Override
        public double gap(double[] q) {
            double[][] touches = touches(q);
            double path = 0;
            for (int k = 0; k + 1 < touches.length; k += 2) {
                double[] span = minus(touches[k + 1], touches[k]);
                path += Math.hypot(span[0], span[1]);
            }
            for (int post = 0; post < string.get("over").size(); post++) {
                path += wrap(touches, post) * number(string.get("over").get(post), "radius");
            }
            return length - path;
        }

        /** By the tension of the first span, without friction. */
        @Override
        public double[] wrench(double[] q) {
            double[] wrench = new double[q.length];
            pull(wrench, first, q, 1);
            pull(wrench, last, q, 1);
            return wrench;
        }

        private void pull(double[] wrench, String name, double[] q, double tension) {
            double[][] touches = touches(q);
            boolean begin = name.equals(first);
            double[] place = begin ? touches[0] : touches[touches.length - 1];
            double[] span = minus(begin ? touches[1] : touches[touches.length - 2], place);
            push(wrench, name, place, span, tension / Math.hypot(span[0], span[1]), q);
        }

        /** The span toward which it slips has e to the friction times the wrap as much. */
        @Override
        public double[] rubbing(double[] q, double force, double[] slid) {
            double[] wrench = new double[q.length];
            double[][] touches = touches(q);
            double[] unit = new double[q.length];
            pull(unit, last, q, 1);
            double toLast = 0;
            for (int c = 0; c < q.length; c++) {
                toLast -= unit[c] * slid[c];
            }
            double power = 0;
            for (int post = 0; post < string.get("over").size(); post++) {
                power += number(string.get("over").get(post), "friction") * wrap(touches, post);
            }
            pull(wrench, last, q, force * Math.expm1(Math.signum(toLast) * power));
            return wrench;
        }
    }

    // Places, wrenches, equations.

    private boolean isBody(String name) {
        return body(name) >= 0;
    }

    private int body(String name) {
        for (int b = 0; b < bodies.size(); b++) {
            if (bodies.get(b).get("name").stringValue().equals(name)) {
                return b;
            }
        }
        return -1;
    }

    private double angle(String name, double[] q) {
        return isBody(name) ? q[3 * body(name) + 2] : 0;
    }

    private double turned(JsonNode joint, String which, double[] q) {
        return angle(joint.get(which).stringValue(), q);
    }

    /** Where a drawn point of a body is. */
    private double[] at(String name, JsonNode point, double[] q) {
        int b = body(name);
        if (b < 0) {
            return array(point);
        }
        double[] arm = minus(array(point), new double[] {drawn[3 * b], drawn[3 * b + 1]});
        double[] now = turned(arm, q[3 * b + 2], 1);
        return new double[] {q[3 * b] + now[0], q[3 * b + 1] + now[1]};
    }

    private void push(double[] wrench, String name, double[] place, double[] way, double size, double[] q) {
        int b = body(name);
        if (b >= 0) {
            wrench[3 * b] += size * way[0];
            wrench[3 * b + 1] += size * way[1];
            wrench[3 * b + 2] += size * ((place[0] - q[3 * b]) * way[1] - (place[1] - q[3 * b + 1]) * way[0]);
        }
    }

    private void turn(double[] wrench, String name, double moment) {
        if (isBody(name)) {
            wrench[3 * body(name) + 2] += moment;
        }
    }

    private static double[] gradient(ToDoubleFunction<double[]> gap, double[] q) {
        double[] gradient = new double[q.length];
        double step = 1e-4;
        for (int c = 0; c < q.length; c++) {
            double[] moved = q.clone();
            double sum = 0;
            for (double[] point : new double[][] {{1, 8}, {-1, -8}, {2, -1}, {-2, 1}}) {
                moved[c] = q[c] + point[0] * step;
                sum += point[1] * gap.applyAsDouble(moved);
            }
            gradient[c] = sum / (12 * step);
        }
        return gradient;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1]};
    }

    private static double[] turned(double[] a, double angle, double scale) {
        double c = scale * Math.cos(angle);
        double s = scale * Math.sin(angle);
        return new double[] {c * a[0] - s * a[1], s * a[0] + c * a[1]};
    }

    private static double[] array(JsonNode point) {
        return new double[] {point.get(0).doubleValue(), point.get(1).doubleValue()};
    }

    private static double number(JsonNode node, String name) {
        return node.get(name).doubleValue();
    }

    private static double radians(JsonNode node, String name) {
        return Math.toRadians(number(node, name));
    }
}
