package jackwork.check;

import java.util.ArrayList;
import java.util.List;

/**
 * A rod across its plates, as an elastic beam that lies simply on the middles of the two that grip it and is built in at
 * neither: the most that it can be bent by loads between them. Where one plate alone grips it, it stands out of that one's middle
 * (any text on strength of materials). Loads are spread evenly over the layers that bear on it. Lengths mm, forces N.
 *
 * @param supports middles of the plates that grip it, one or two
 * @param spread what bears on it
 */
record RodBeam(List<Double> supports, List<Load> spread) {

    /**
     * An even load.
     *
     * @param from where it begins, along the rod
     * @param to where it ends
     */
    record Load(double from, double to, double force) {

        private double middle() {
            return (from + to) / 2;
        }

        /** What of it lies before a place. */
        private double before(double place) {
            return to > from ? force * Math.max(0, Math.min(place, to) - from) / (to - from) : place > from ? force : 0;
        }

        private double momentBefore(double place) {
            double part = before(place);
            double end = Math.min(place, to);
            return part == 0 ? 0 : part * (place - (from + end) / 2);
        }
    }

    /** Second moment over radius of a round rod, mm³. */
    static double modulus(double diameter) {
        return Math.PI * diameter * diameter * diameter / 32;
    }

    /** mm². */
    static double area(double diameter) {
        return Math.PI * diameter * diameter / 4;
    }

    /** What a plate takes of the loads, in the order of {@link #supports}. */
    List<Double> reactions() {
        double total = spread.stream().mapToDouble(Load::force).sum();
        if (supports.size() == 1) {
            return List.of(total);
        }
        double left = supports.get(0);
        double right = supports.get(1);
        double second = spread.stream()
                        .mapToDouble(load -> load.force * (load.middle() - left))
                        .sum()
                / (right - left);
        return List.of(total - second, second);
    }

    /** Greatest bending moment anywhere, N·mm. */
    double bending() {
        if (supports.size() == 1) {
            double root = supports.get(0);
            return Math.abs(spread.stream()
                    .mapToDouble(load -> load.force * Math.abs(load.middle() - root))
                    .sum());
        }
        double most = 0;
        for (double place : places()) {
            most = Math.max(most, Math.abs(bendingAt(place)));
        }
        return most;
    }

    /** Greatest force across the rod, N. */
    double shear() {
        return reactions().stream().mapToDouble(Math::abs).max().orElse(0);
    }

    private double bendingAt(double place) {
        double moment = reactions().get(0) * Math.max(0, place - supports.get(0))
                + reactions().get(1) * Math.max(0, place - supports.get(1));
        for (Load load : spread) {
            moment -= load.momentBefore(place);
        }
        return moment;
    }

    /** Between the ends of its loads the moment is a parabola: its ends, and its top where there is one. */
    private List<Double> places() {
        List<Double> ends = new ArrayList<>(supports);
        for (Load load : spread) {
            ends.add(load.from);
            ends.add(load.to);
        }
        ends.sort(null);
        List<Double> places = new ArrayList<>(ends);
        for (int i = 0; i + 1 < ends.size(); i++) {
            double a = ends.get(i);
            double b = ends.get(i + 1);
            double here = across((a + b) / 2 - (b - a) / 2 * (1 - 1e-9));
            double there = across((a + b) / 2 + (b - a) / 2 * (1 - 1e-9));
            if (here * there < 0) {
                places.add(a + (b - a) * here / (here - there));
            }
        }
        return places;
    }

    /** Force across the rod at a place. */
    private double across(double place) {
        double force = 0;
        for (int i = 0; i < 2; i++) {
            force += place > supports.get(i) ? reactions().get(i) : 0;
        }
        for (Load load : spread) {
            force -= load.before(place);
        }
        return force;
    }
}
