package jackwork.motion;

import jackwork.parts.CamPair;
import jackwork.parts.DistanceLimit;
import jackwork.parts.GearMesh;
import jackwork.parts.Link;
import jackwork.parts.RackMesh;
import jackwork.parts.RatchetPair;
import jackwork.parts.SpringLink;
import jackwork.parts.StringRun;
import jackwork.parts.Torque;
import jackwork.parts.TouchPair;

/** Adds a design's links to a mechanism: one line a kind. */
final class LinkCompiler {

    /** Share of the approach that comes back when wood strikes wood: a guess, to be measured. */
    static final double WOOD_ON_WOOD = 0.3;

    private static final double MICRO = 1e6;

    private LinkCompiler() {}

    /** @param number of each of the assembly's bodies in the mechanism */
    static void add(MechanismBuilder builder, Link link, int[] number) {
        if (link instanceof GearMesh mesh) {
            builder.mesh(
                    mesh.name(),
                    number[mesh.a()],
                    mesh.centreA(),
                    mesh.gearA().teeth(),
                    number[mesh.b()],
                    mesh.centreB(),
                    mesh.inside() ? -mesh.gearB().teeth() : mesh.gearB().teeth(),
                    mesh.gearA().pressureAngle(),
                    mesh.friction().coefficient().value());
        } else if (link instanceof RackMesh rack) {
            builder.rack(
                    rack.name(),
                    number[rack.a()],
                    rack.centre(),
                    rack.gear().teeth(),
                    number[rack.b()],
                    rack.pitchPoint(),
                    rack.gear().pressureAngle(),
                    rack.friction().coefficient().value());
        } else if (link instanceof CamPair cam) {
            builder.cam(
                    cam.name(),
                    number[cam.follower()],
                    cam.peg(),
                    cam.radius(),
                    number[cam.cam()],
                    cam.centre(),
                    cam.profile(),
                    cam.friction().coefficient().value());
        } else if (link instanceof RatchetPair pawl) {
            builder.touchDisc(
                    pawl.name(),
                    number[pawl.pawl()],
                    pawl.tip(),
                    pawl.radius(),
                    number[pawl.wheel()],
                    pawl.teeth(),
                    pawl.friction().coefficient().value(),
                    WOOD_ON_WOOD);
        } else if (link instanceof StringRun string) {
            addString(builder, string, number);
        } else if (link instanceof DistanceLimit limit) {
            builder.distanceStop(
                    limit.name(),
                    number[limit.a()],
                    limit.onA(),
                    number[limit.b()],
                    limit.onB(),
                    limit.least(),
                    limit.most());
        } else if (link instanceof TouchPair touch) {
            addTouch(builder, touch, number);
        } else if (link instanceof SpringLink spring) {
            builder.spring(
                    spring.name(),
                    number[spring.a()],
                    spring.onA(),
                    number[spring.b()],
                    spring.onB(),
                    MICRO * spring.stiffness(),
                    spring.free(),
                    spring.pullsOnly());
        } else if (link instanceof Torque torque) {
            builder.torque(number[torque.body()], MICRO * torque.moment());
        } else {
            throw new IllegalArgumentException("no equations for " + link);
        }
    }

    private static void addString(MechanismBuilder builder, StringRun string, int[] number) {
        builder.cord(
                string.name(),
                number[string.a()],
                string.from(),
                string.over().stream()
                        .map(guide -> new MechanismBuilder.CordGuide(
                                number[guide.body()],
                                guide.at(),
                                guide.radius(),
                                guide.side(),
                                guide.friction().coefficient().value()))
                        .toList(),
                number[string.b()],
                string.to(),
                string.slack());
    }

    private static void addTouch(MechanismBuilder builder, TouchPair touch, int[] number) {
        int a = number[touch.a()];
        int b = number[touch.b()];
        double friction = touch.friction().coefficient().value();
        if (touch.radius() > 0) {
            builder.touchDisc(
                    touch.name(), a, touch.shapeA().get(0), touch.radius(), b, touch.shapeB(), friction, WOOD_ON_WOOD);
        } else {
            builder.touch(touch.name(), a, touch.shapeA(), b, touch.shapeB(), friction, WOOD_ON_WOOD);
        }
    }
}
