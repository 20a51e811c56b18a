package jackwork.motion.coin;

import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.Settings;
import org.dyn4j.dynamics.TimeStep;
import org.dyn4j.dynamics.joint.AbstractSingleBodyJoint;
import org.dyn4j.dynamics.joint.Joint;
import org.dyn4j.geometry.Vector2;

/**
 * A finger for the peer, which has none: pushes a point of a body along a direction of space, with no more than a force, to no more
 * than a speed, and never holds back. One row of the peer's own sequential impulses.
 */
final class LoneFinger extends AbstractSingleBodyJoint<Body> {

    private final Vector2 press;
    private final Vector2 way;
    private double force;
    private double speed;
    private double arm;
    private double effective;
    private double impulse;

    /** @param press in the body's own frame */
    LoneFinger(Body body, Vector2 press, Vector2 way) {
        super(body);
        this.press = press;
        this.way = way;
    }

    /** In the peer's units; no force takes the finger off. */
    void push(double most, double fastest) {
        force = most;
        speed = fastest;
    }

    @Override
    public void initializeConstraints(TimeStep step, Settings settings) {
        Vector2 from = body.getWorldPoint(press).subtract(body.getWorldCenter());
        arm = from.cross(way);
        effective = 1
                / (body.getMass().getInverseMass() + arm * arm * body.getMass().getInverseInertia());
        impulse = Math.min(impulse, force * step.getDeltaTime());
        apply(impulse);
    }

    @Override
    public void solveVelocityConstraints(TimeStep step, Settings settings) {
        double rate = body.getLinearVelocity().dot(way) + arm * body.getAngularVelocity();
        double before = impulse;
        double wanted = before + effective * (speed - rate);
        impulse = Math.max(0, Math.min(force * step.getDeltaTime(), wanted));
        apply(impulse - before);
    }

    private void apply(double size) {
        double inverse = body.getMass().getInverseMass();
        body.getLinearVelocity().add(way.x * size * inverse, way.y * size * inverse);
        body.setAngularVelocity(body.getAngularVelocity() + body.getMass().getInverseInertia() * arm * size);
    }

    @Override
    public boolean solvePositionConstraints(TimeStep step, Settings settings) {
        return true;
    }

    @Override
    public Vector2 getReactionForce(double rate) {
        return way.product(impulse * rate);
    }

    @Override
    public double getReactionTorque(double rate) {
        return 0;
    }

    @Override
    public void shift(Vector2 by) {
        // Its point is in the body's own frame.
    }

    @Override
    public AbstractSingleBodyJoint<Body> copy(Body other) {
        throw new UnsupportedOperationException("nobody copies it");
    }

    @Override
    public Joint<Body> copy() {
        throw new UnsupportedOperationException("nobody copies it");
    }
}
