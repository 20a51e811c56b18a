package jackwork.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The way of a taut string from a point over posts and through eyelets to a point, as drawn.
 *
 * <p>A drawing shows a wrap but for whole turns: as drawn it is taken from −90° to 270° on the post's side, and whole turns are
 * added to that. A post whose wrap is negative then is not touched: the string passes it by.
 *
 * @param length mm
 * @param wraps angle by which the string turns on each guide, on the post's side, rad; negative where it is not touched
 */
public record TautPath(double length, List<Double> wraps) {

    /**
     * A guide.
     *
     * @param radius 0 for an eyelet, mm
     * @param side +1 where the string bends to its left, −1 to its right; an eyelet holds it either way
     * @param wholeTurns round a post, beside what the drawing shows
     */
    public record Round(Point centre, double radius, int side, int wholeTurns) {

        double signed() {
            return radius * side;
        }
    }

    /** Posts that are not touched are left out one at a time, the most negative wrap first. */
    public static TautPath of(Point from, List<Round> over, Point to) {
        double[] wraps = new double[over.size()];
        List<Integer> on = new ArrayList<>();
        for (int i = 0; i < over.size(); i++) {
            on.add(i);
        }
        while (true) {
            double length = measure(from, over, to, on, wraps);
            int worst = -1;
            for (int i : on) {
                worst = wraps[i] < 0 && (worst < 0 || wraps[i] < wraps[worst]) ? i : worst;
            }
            if (worst < 0) {
                return new TautPath(
                        length, java.util.Arrays.stream(wraps).boxed().toList());
            }
            on.remove(Integer.valueOf(worst));
        }
    }

    private static double measure(Point from, List<Round> over, Point to, List<Integer> on, double[] wraps) {
        Round last = new Round(from, 0, 1, 0);
        double before = 0;
        double length = 0;
        for (int k = 0; k <= on.size(); k++) {
            Round next = k < on.size() ? over.get(on.get(k)) : new Round(to, 0, 1, 0);
            Point way = next.centre().minus(last.centre());
            double apart = next.signed() - last.signed();
            double sine = Math.max(-1, Math.min(1, apart / way.length()));
            double direction = Math.atan2(way.y(), way.x()) - Math.asin(sine);
            length += way.length() * Math.sqrt(1 - sine * sine);
            if (k > 0) {
                double wrap = wrap(last, direction - before);
                wraps[on.get(k - 1)] = wrap;
                length += wrap * last.radius();
            }
            last = next;
            before = direction;
        }
        return length;
    }

    private static double wrap(Round guide, double turn) {
        double folded = Math.IEEEremainder(turn, 2 * Math.PI);
        if (guide.radius() == 0) {
            return Math.abs(folded);
        }
        double onSide = guide.side() * folded;
        double drawn = onSide < -Math.PI / 2 ? onSide + 2 * Math.PI : onSide;
        return drawn + 2 * Math.PI * guide.wholeTurns();
    }
}
