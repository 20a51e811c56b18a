package jackwork.make;

/** How long a step at the bench takes, minutes: guesses by common practice, until a bench log says better. */
final class Minutes {

    double cleaning(int parts) {
        return 0.7 * parts;
    }

    double cuttingRods(int rods) {
        return 0.4 * rods;
    }

    double gluing(int parts, int dowels) {
        return 2 + parts + 0.6 * dowels;
    }

    double puttingOn(int joints) {
        return 1 + joints;
    }

    double tying() {
        return 4;
    }

    double casing(int panels) {
        return 4 + 1.2 * panels;
    }

    double screwing(int screws) {
        return 1 + 0.6 * screws;
    }

    double trying() {
        return 10;
    }
}
