package jackwork.motion.model;

import java.util.Arrays;

/**
 * Which sides of a shape q a corner of a shape p may meet, kept until they have moved a little: all within the range,
 * and a skin more. Only spares work: what it leaves out is out of range, whatever was looked at before. One per
 * thread; grows until it has held the most, then allocates nothing.
 */
final class TouchNear {

    private final TouchShape ofP;
    private final TouchShape ofQ;
    private final double far;
    private double x = Double.NaN;
    private double y;
    private double angle;
    /** Corners of p that are near something. */
    int corners;

    int[] corner = new int[8];
    /** Where each corner's sides begin, and one past the last. */
    int[] first = new int[9];
    /** Sides of q, by corner, in their order. */
    int[] side = new int[64];

    /** @param range beyond their radii within which they are looked at, mm */
    TouchNear(TouchShape ofP, TouchShape ofQ, double range) {
        this.ofP = ofP;
        this.ofQ = ofQ;
        this.far = ofP.radius + ofQ.radius + range + ModelLimits.SKIN;
    }

    void forget() {
        x = Double.NaN;
    }

    /** Brings it up to date for bodies p and q as the rows hold them. */
    void at(Rows rows, int p, int q) {
        double dx = rows.x(p) - rows.x(q);
        double dy = rows.y(p) - rows.y(q);
        double ownX = rows.ownX(q, dx, dy);
        double ownY = rows.ownY(q, dx, dy);
        double turned = rows.angle(p) - rows.angle(q);
        double moved = Math.abs(turned - angle) * ofP.turningReach;
        double left = ModelLimits.SKIN - moved;
        // Written so that NaN looks again.
        boolean near = left > 0 && (ownX - x) * (ownX - x) + (ownY - y) * (ownY - y) < left * left;
        if (!near) {
            x = ownX;
            y = ownY;
            angle = turned;
            look(Math.cos(turned), Math.sin(turned));
        }
    }

    private void look(double cos, double sin) {
        corners = 0;
        int sides = 0;
        first[0] = 0;
        for (int chunk = 0; chunk < ofP.chunks; chunk++) {
            double middleX = x + cos * ofP.middleX[chunk] - sin * ofP.middleY[chunk];
            double middleY = y + sin * ofP.middleX[chunk] + cos * ofP.middleY[chunk];
            if (!ofQ.isNear(middleX, middleY, ofP.around[chunk] + far)) {
                continue;
            }
            int end = Math.min(ofP.x.length, (chunk + 1) * ModelLimits.CHUNK);
            for (int i = chunk * ModelLimits.CHUNK; i < end; i++) {
                if (ofP.standsOut[i]) {
                    double cx = x + cos * ofP.x[i] - sin * ofP.y[i];
                    double cy = y + sin * ofP.x[i] + cos * ofP.y[i];
                    sides = lookAbout(i, cx, cy, sides);
                }
            }
        }
    }

    /** Takes in a corner's sides; returns how many there are by now. */
    private int lookAbout(int i, double cx, double cy, int before) {
        int sides = before;
        for (int chunk = 0; chunk < ofQ.chunks; chunk++) {
            if (!ofQ.isNear(chunk, cx, cy, far)) {
                continue;
            }
            int end = Math.min(ofQ.x.length, (chunk + 1) * ModelLimits.CHUNK);
            for (int j = chunk * ModelLimits.CHUNK; j < end; j++) {
                if (ofQ.squareDistance(j, cx, cy) < far * far) {
                    side = side.length > sides ? side : Arrays.copyOf(side, 2 * sides);
                    side[sides++] = j;
                }
            }
        }
        if (sides > before) {
            if (corners == corner.length) {
                corner = Arrays.copyOf(corner, 2 * corners);
                first = Arrays.copyOf(first, 2 * corners + 1);
            }
            corner[corners++] = i;
            first[corners] = sides;
        }
        return sides;
    }
}
