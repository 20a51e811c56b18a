package jackwork.drawing;

/** What one file may cost: a few bytes of curves and copies must not ask for all memory and time. */
final class Budget {

    static final int MOST_POINTS = 1_000_000;

    /** Elements met while drawing, each copy by {@code use} counted again. */
    static final int MOST_VISITS = 1_000_000;

    private int points;
    private int visits;

    void spendPoint(SvgElement element) {
        if (++points > MOST_POINTS) {
            throw spent(element);
        }
    }

    void spendVisit(SvgElement element) {
        if (++visits > MOST_VISITS) {
            throw element.problem("copies by <use> make more than " + MOST_VISITS
                    + " elements of this drawing; turn the copies into paths of their own");
        }
    }

    DrawingException spent(SvgElement element) {
        return element.problem("the drawing has more than " + MOST_POINTS
                + " path points; simplify its paths, or leave pictures and textures out");
    }
}
