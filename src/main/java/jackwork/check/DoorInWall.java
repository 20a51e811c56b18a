package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.geometry.Point;
import java.util.List;
import java.util.Map;

/** The door's opening lies within the far wall, with wood around it for its frame. */
final class DoorInWall implements Question {

    /** Wood around the opening that a frame can be glued to, mm: common practice, no source. */
    private static final double AROUND = 6;

    @Override
    public boolean appliesTo(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        return housing != null && housing.door() != null;
    }

    @Override
    public List<Finding> ask(Subject subject) {
        CaseEntry housing = subject.design().box().housing();
        CaseEntry.Door door = housing == null ? null : housing.door();
        if (housing == null || door == null) {
            return List.of();
        }
        Point at = subject.design().inBox(door.at(), "");
        Map<String, Double> sides = Map.of(
                "left", at.x() - housing.left(),
                "right", housing.left() + housing.width() - at.x() - door.width(),
                "lower", at.y() - housing.floor(),
                "upper", housing.floor() + housing.height() - at.y() - door.height());
        var worst = sides.entrySet().stream()
                .min(Map.Entry.<String, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .orElseThrow();
        double wood = worst.getValue();
        boolean holds = wood >= AROUND;
        return List.of(Finding.ask(Topic.DOOR_IN_WALL, say("Does the door leave its wall wood all round?"))
                .answer(holds ? Status.PASS : Status.FAIL, wood, AROUND, wood - AROUND, "mm")
                .at(new Where("door", null, at))
                .because(
                        wood > 0
                                ? say("{} of the wall are left at the {} edge", mm(wood), worst.getKey())
                                : say("the opening goes {} beyond the wall at the {} edge", mm(-wood), worst.getKey()),
                        holds ? Sentence.NOTHING : say("Make the door smaller, or move it inward."),
                        "wood beside the opening, least of four = " + Words.number(wood) + " mm; at least "
                                + Words.number(AROUND) + " mm for the frame (common practice, no source)"));
    }
}
