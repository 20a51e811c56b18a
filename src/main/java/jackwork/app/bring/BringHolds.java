package jackwork.app.bring;

import jackwork.app.core.Attempt;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether every part of a figure is held by something, and the lever moves something. */
final class BringHolds {

    private static final String LEVER = "the lever";

    private final BringFigure figure;
    private final Map<String, String> parent = new HashMap<>();

    private BringHolds(BringFigure figure) {
        this.figure = figure;
    }

    static List<Attempt.Complaint> complaints(BringFigure figure) {
        BringHolds holds = new BringHolds(figure);
        figure.pins()
                .forEach((name, pin) ->
                        pin.parts().forEach(part -> holds.join(pin.parts().get(0), part)));
        figure.strings().forEach((name, string) -> holds.join(string.part(), LEVER));
        return holds.complaints();
    }

    private List<Attempt.Complaint> complaints() {
        List<Attempt.Complaint> complaints = new ArrayList<>();
        Set<String> said = new LinkedHashSet<>();
        for (BringFigure.Made part : figure.parts().values()) {
            String body = body(part.name());
            boolean held =
                    root(body).equals(root(BringPlan.STANDS)) || root(body).equals(root(LEVER));
            if (!held && said.add(body)) {
                complaints.add(new Attempt.Complaint(
                        part.name(),
                        "Nothing holds " + part.name()
                                + ": pin it to another part, glue it to one, or let it stand on the box."));
            }
        }
        boolean moved = figure.pins().values().stream()
                        .anyMatch(pin ->
                                pin.parts().contains(figure.box().box().lever().part()))
                || !figure.strings().isEmpty();
        if (!moved) {
            complaints.add(
                    new Attempt.Complaint("", "The lever moves nothing yet: choose a point that it lifts or pulls."));
        }
        return complaints;
    }

    private String body(String part) {
        BringFigure.Made made = figure.parts().get(part);
        if (made == null) {
            return LEVER;
        }
        if (made.body().equals(BringPlan.STANDS)) {
            return BringPlan.STANDS;
        }
        return made.body().isEmpty() ? "part " + part : "body " + made.body();
    }

    private void join(String one, String other) {
        String from = root(body(one));
        String to = root(other.equals(LEVER) ? LEVER : body(other));
        if (!from.equals(to)) {
            parent.put(from, to);
        }
    }

    private String root(String body) {
        String at = body;
        while (parent.containsKey(at)) {
            at = parent.getOrDefault(at, at);
        }
        return at;
    }
}
