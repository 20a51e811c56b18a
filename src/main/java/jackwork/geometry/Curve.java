package jackwork.geometry;

/** A smooth closed curve, counter-clockwise, by a parameter that repeats itself. */
public interface Curve {

    /** Parameter after which the curve repeats itself. */
    double period();

    /**
     * @param at parameter, any
     * @param into x, y, then their first and second derivatives by the parameter, mm, [6]
     */
    void evaluate(double at, double[] into);
}
