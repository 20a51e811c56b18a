package jackwork.motion.model;

import jackwork.geometry.Point;

/**
 * A point of a body, where a joint or a spring holds it.
 *
 * @param ownX in the body's own frame as drawn, mm; in the world's on the ground
 */
record Anchor(int body, double ownX, double ownY) {

    Anchor(int body, Point own) {
        this(body, own.x(), own.y());
    }

    /** From the body's centre to the point at the pose, mm. */
    double armX(Rows rows) {
        return rows.armX(body, ownX, ownY);
    }

    double armY(Rows rows) {
        return rows.armY(body, ownX, ownY);
    }

    /** Where the point is at the pose, mm. */
    double x(Rows rows) {
        return rows.x(body) + rows.armX(body, ownX, ownY);
    }

    double y(Rows rows) {
        return rows.y(body) + rows.armY(body, ownX, ownY);
    }
}
