package jackwork.check;

import static jackwork.check.Sentence.say;

import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Body;
import jackwork.parts.Part;
import java.util.List;

/**
 * No two parts of one body take the same place in one layer: what is fixed or glued together cannot lie in itself. Parts that
 * are printed in one piece may.
 */
final class PartsShare implements Question {

    /** Edges drawn alike may overlap by so much, mm². */
    private static final double DRAWN = 0.5;

    private record Shared(Part a, Part b, double area, Point at) {}

    @Override
    public boolean isQuick() {
        return false;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        Shared worst = null;
        for (Body body : subject.assembly().bodies()) {
            List<Part> parts = body.parts();
            for (int i = 0; i < parts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    Shared shared = shared(parts.get(j), parts.get(i));
                    worst = worst == null || shared.area() > worst.area() ? shared : worst;
                }
            }
        }
        return worst == null ? List.of() : List.of(finding(worst));
    }

    private static Shared shared(Part a, Part b) {
        String printed = a.printed();
        boolean one = printed != null && printed.equals(b.printed());
        if (a.layer() != b.layer() || one) {
            return new Shared(a, b, 0, Point.ORIGIN);
        }
        List<Outline> pieces = a.drawn().shared(b.drawn());
        double area = pieces.stream().mapToDouble(Outline::area).sum();
        return new Shared(
                a, b, area, pieces.isEmpty() ? Point.ORIGIN : pieces.get(0).centroid());
    }

    private static Finding finding(Shared shared) {
        boolean apart = shared.area() <= DRAWN;
        return Finding.ask(
                        Topic.PARTS_SHARE, say("Has every part a place in its layer that no other of its body takes?"))
                .answer(apart ? Status.PASS : Status.FAIL, shared.area(), DRAWN, DRAWN - shared.area(), "mm²")
                .at(apart ? Where.nowhere() : new Where(shared.b().name(), 0.0, shared.at()))
                .because(
                        apart
                                ? say("no two parts that are fixed or glued together lie in one another")
                                : say(
                                        "{} and {} would both lie in layer {} in the same place, over {} mm²",
                                        shared.a().name(),
                                        shared.b().name(),
                                        shared.a().layer(),
                                        Measure.of(shared.area(), "1")),
                        apart ? Sentence.NOTHING : say("Move one of them to another layer, or take one out."),
                        "area that two parts of one body and layer share, greatest = " + Words.number(shared.area())
                                + " mm²");
    }
}
