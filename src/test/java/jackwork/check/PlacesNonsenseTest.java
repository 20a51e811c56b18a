package jackwork.check;

import static jackwork.check.Nonsense.changed;
import static jackwork.check.Nonsense.isNo;
import static jackwork.check.Nonsense.number;
import static jackwork.check.Nonsense.place;
import static jackwork.check.Nonsense.replaced;
import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Bounds;
import jackwork.geometry.Outline;
import jackwork.geometry.Point;
import jackwork.parts.Part;
import java.io.IOException;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Weights, marks, rooms, panels and screws: random places and sizes on either side of what can be made. */
class PlacesNonsenseTest {

    private final Random random = new Random(39);

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** As likely of any size. */
    private double ofAnySize(double low, double high) {
        return Math.exp(between(Math.log(low), Math.log(high)));
    }

    private static Outline part(String design, String name) throws IOException {
        return changed(design, "box.lever.throw: 14").assembly().parts().stream()
                .filter(part -> part.name().equals(name))
                .map(Part::drawn)
                .findFirst()
                .orElseThrow();
    }

    private Point within(Outline outline, double inside) {
        Bounds bounds = outline.bounds();
        while (true) {
            Point at = new Point(between(bounds.minX(), bounds.maxX()), between(bounds.minY(), bounds.maxY()));
            if (outline.contains(at) && outline.distanceToEdge(at) > inside) {
                return at;
            }
        }
    }

    /** From the common frame to the figure's own. */
    private static String inFigure(String design, Point at) throws IOException {
        Subject subject = changed(design, "box.lever.throw: 14");
        Point origin = subject.design().inFigure(new jackwork.design.Place.At(Point.ORIGIN), "");
        return place(at.x() - origin.x(), at.y() - origin.y());
    }

    @Test
    void aWeightLiesOnItsPart() throws IOException {
        Outline body = part("heron", "body");
        for (int i = 0; i < 8; i++) {
            String on = inFigure("heron", within(body, 0.01));
            Point away = body.centroid().plus(new Point(ofAnySize(150, 1e6), 0).turned(between(0, 2 * Math.PI)));
            String off = inFigure("heron", away);
            assertThat(Nonsense.ask(new WeightsLie(), () -> changed("heron", "figure.weights.tail.at: " + on)))
                    .as(on)
                    .isEqualTo(Nonsense.Verdict.PASSES);
            assertThat(isNo(Nonsense.ask(new WeightsLie(), () -> changed("heron", "figure.weights.tail.at: " + off))))
                    .as(off)
                    .isTrue();
        }
    }

    /** No room holds more than lead over all of the part, as thick as all layers and what stands out. */
    @Test
    void aWeightIsAsHeavyAsItsRoomAllows() throws IOException {
        for (int i = 0; i < 8; i++) {
            String heavy = number(ofAnySize(1500, 1e8));
            String light = number(between(0, 60));
            int nuts = (int) ofAnySize(500, 1e6);
            assertThat(isNo(Nonsense.ask(
                            new WeightsFit(), () -> changed("heron", "figure.weights.tail.mass: " + heavy))))
                    .as("%s g", heavy)
                    .isTrue();
            assertThat(Nonsense.ask(new WeightsFit(), () -> changed("heron", "figure.weights.tail.mass: " + light)))
                    .as("%s g", light)
                    .isEqualTo(Nonsense.Verdict.PASSES);
            assertThat(isNo(Nonsense.ask(
                            new WeightsFit(), () -> changed("heron", "box.weights.counterweight.count: " + nuts))))
                    .as("%s nuts", nuts)
                    .isTrue();
        }
    }

    /** On a narrow rod that other parts pass close by, before and behind. */
    @Test
    void aWeightBetweenTwoPartsHasNoRoom() throws IOException {
        assertThat(Nonsense.ask(new WeightsFit(), () -> changed("windmill", "figure.weights.rod-weight.at: drive")))
                .isEqualTo(Nonsense.Verdict.FAILS);
        for (int i = 0; i < 8; i++) {
            double mass = ofAnySize(1200, 1e5);
            assertThat(isNo(Nonsense.ask(
                            new WeightsFit(),
                            () -> changed("windmill", "figure.weights.rod-weight.mass: " + number(mass)))))
                    .as("%s g", mass)
                    .isTrue();
        }
    }

    @Test
    void theCashRoomLiesInTheCase() throws IOException {
        String[] sides = {"to-left", "to-right", "depth", "below"};
        double[] most = {45.2, 106, 62, 38.5};
        double[] least = {0.1, 0.1, 26, 26};
        for (int i = 0; i < 16; i++) {
            int side = i % 4;
            double large = most[side] + ofAnySize(0.2, 1e9);
            double small = least[side] - ofAnySize(0.4, 1e4);
            double fits = between(least[side], most[side]);
            String path = "box.coin-works.cash-room." + sides[side] + ": ";
            assertThat(isNo(Nonsense.ask(new CashRoomFits(), () -> changed("heron", path + number(large)))))
                    .as(path + large)
                    .isTrue();
            assertThat(isNo(Nonsense.ask(new CashRoomFits(), () -> changed("heron", path + number(small)))))
                    .as(path + small)
                    .isTrue();
            assertThat(Nonsense.ask(new CashRoomFits(), () -> changed("heron", path + number(fits))))
                    .as(path + fits)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    @Test
    void aGestureWatchesItsPart() throws IOException {
        Outline head = part("heron", "head");
        for (int i = 0; i < 8; i++) {
            String on = inFigure("heron", within(head, 0));
            Point away = head.centroid().plus(new Point(ofAnySize(120, 1e5), 0).turned(between(0, 2 * Math.PI)));
            String off = inFigure("heron", away);
            double distance = -ofAnySize(0.01, 1e4);
            assertThat(gesture("distance: 60, point: " + on)).as(on).isEqualTo(Nonsense.Verdict.PASSES);
            assertThat(isNo(gesture("distance: 60, point: " + off))).as(off).isTrue();
            assertThat(isNo(gesture("distance: " + number(distance))))
                    .as("%s mm", distance)
                    .isTrue();
        }
        assertThat(isNo(gesture("distance: 0"))).isTrue();
    }

    private static Nonsense.Verdict gesture(String words) throws IOException {
        return Nonsense.ask(new GesturesMarked(), () -> replaced("heron", "heron/design.yaml", "distance: 60", words));
    }

    /** Points of lever and coin works, moved off what they mark by any way. */
    @Test
    void theWorksArePointedOutOnTheirWood() throws IOException {
        String[] points = {"coin-works.kicker", "coin-works.catch.tooth", "coin-works.catch.strut", "lever.press"};
        for (int i = 0; i < 8; i++) {
            String point = "box." + points[i % points.length];
            Point away = new Point(75, 50).plus(new Point(ofAnySize(130, 1e5), 0).turned(between(0, 2 * Math.PI)));
            assertThat(isNo(Nonsense.ask(
                            new WorksMarked(), () -> changed("heron", point + ": " + place(away.x(), away.y())))))
                    .as("%s at %s", point, away)
                    .isTrue();
        }
        // Along the lever's own wood it may be pressed anywhere.
        for (int i = 0; i < 6; i++) {
            double x = between(120, 160);
            assertThat(Nonsense.ask(new WorksMarked(), () -> changed("heron", "box.lever.press: " + place(x, 72))))
                    .as("pressed at %s", x)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    @Test
    void theCaseTakesWorksDoorAndScrews() throws IOException {
        for (int i = 0; i < 8; i++) {
            double narrow = between(25, 149);
            double shallow = between(21, 31);
            double wide = between(400, 1900);
            double door = between(-9, 140);
            assertThat(caseWith(new WorksInCase(), "width: 151.2", "width: " + number(narrow)))
                    .as("%s mm wide", narrow)
                    .isTrue();
            assertThat(caseWith(new WorksInCase(), "depth: 62\n", "depth: " + number(shallow) + "\n"))
                    .as("%s mm deep", shallow)
                    .isTrue();
            assertThat(caseWith(new CaseFitsSheet(), "width: 151.2", "width: " + number(wide)))
                    .as("%s mm wide", wide)
                    .isTrue();
            // Its door is 70 mm wide, in a wall from −0.6 to 150.6 mm.
            assertThat(caseWith(new DoorInWall(), "at: [40, -3]", "at: " + place(door, -3)))
                    .as("door at %s", door)
                    .isEqualTo(door < 5.4 || door > 74.6);
        }
    }

    @Test
    void everyScrewGoesThroughWallAndPlate() throws IOException {
        for (int i = 0; i < 8; i++) {
            Point away = new Point(75, 50).plus(new Point(ofAnySize(110, 1e5), 0).turned(between(0, 2 * Math.PI)));
            double x = between(2.8, 20);
            assertThat(caseWith(new ScrewsHold(), "[5, 84]", place(away.x(), away.y())))
                    .as("screw at %s", away)
                    .isTrue();
            assertThat(caseWith(new ScrewsHold(), "[5, 84]", place(x, 84)))
                    .as("screw at %s", x)
                    .isFalse();
        }
    }

    private static boolean caseWith(Question question, String from, String to) throws IOException {
        return isNo(Nonsense.ask(question, () -> replaced("heron", "boxes/marsh-box/box.yaml", from, to)));
    }

    @Test
    void theSlotStandsOverItsGap() throws IOException {
        for (int i = 0; i < 8; i++) {
            double width = between(4, 200);
            double length = between(45, 140);
            double gap = ofAnySize(32, 1e6);
            Point away = new Point(53, 60).plus(new Point(ofAnySize(160, 1e5), 0).turned(between(0, 2 * Math.PI)));
            assertThat(slot("box.coin-works.slot.width: " + number(width)))
                    .as("%s wide", width)
                    .isTrue();
            assertThat(slot("box.coin-works.slot.length: " + number(length)))
                    .as("%s long", length)
                    .isTrue();
            assertThat(slot("box.coin-works.bucket.side-gap: " + number(gap)))
                    .as("%s gap", gap)
                    .isTrue();
            assertThat(slot("box.coin-works.slot.at: " + place(away.x(), away.y())))
                    .as("%s", away)
                    .isTrue();
            assertThat(slot("box.coin-works.slot.width: " + number(between(2.6, 3.9))))
                    .isFalse();
            assertThat(slot("box.coin-works.slot.length: " + number(between(26, 44))))
                    .isFalse();
            assertThat(slot("box.coin-works.slot.at: " + place(between(40, 66), between(92, 101))))
                    .isFalse();
        }
    }

    private static boolean slot(String change) throws IOException {
        return isNo(Nonsense.ask(new SlotPlaced(), () -> changed("heron", change)));
    }

    @Test
    void layersAreFilledAndNotTwiceTaken() throws IOException {
        for (int i = 0; i < 8; i++) {
            int layer = 12 + random.nextInt(50);
            assertThat(Nonsense.ask(
                            new LayersFilled(), () -> changed("heron", "figure.parts.wing-near.layer: " + layer)))
                    .as("layer %s", layer)
                    .isIn(Nonsense.Verdict.DOUBTFUL, Nonsense.Verdict.REFUSED);
        }
        // Layers are counted from 0: there is none behind it.
        assertThat(Nonsense.ask(new LayersFilled(), () -> changed("heron", "figure.parts.wing-near.layer: -1")))
                .isEqualTo(Nonsense.Verdict.REFUSED);
        for (int layer : new int[] {0, 7, 11}) {
            assertThat(Nonsense.ask(
                            new LayersFilled(), () -> changed("heron", "figure.parts.wing-near.layer: " + layer)))
                    .as("layer %s", layer)
                    .isEqualTo(Nonsense.Verdict.PASSES);
        }
        // The body's own layer.
        assertThat(Nonsense.ask(new PartsShare(), () -> changed("heron", "figure.parts.wing-near.layer: 3")))
                .isEqualTo(Nonsense.Verdict.FAILS);
    }

    @Test
    void aPictureLiesOnItsPart() throws IOException {
        String written = "{file: heron-body.png, at: [-74, 48], width: 113, bleed: 2}";
        for (int i = 0; i < 10; i++) {
            double x = (random.nextBoolean() ? 1 : -1) * ofAnySize(250, 1e5);
            double width = random.nextBoolean() ? ofAnySize(0.1, 15) : ofAnySize(800, 5000);
            double shift = between(-10, 10);
            assertThat(picture(written, String.format(Locale.ROOT, "at: [%.2f, 48], width: 113", x)))
                    .as("at %s", x)
                    .isTrue();
            assertThat(picture(written, String.format(Locale.ROOT, "at: [-74, 48], width: %.2f", width)))
                    .as("%s wide", width)
                    .isTrue();
            assertThat(picture(written, String.format(Locale.ROOT, "at: [%.2f, 48], width: 113", -74 + shift)))
                    .as("shifted by %s", shift)
                    .isFalse();
        }
    }

    private static boolean picture(String written, String words) throws IOException {
        return isNo(Nonsense.ask(
                new PicturesLie(),
                () -> replaced(
                        "heron", "heron/figure.yaml", written, "{file: heron-body.png, " + words + ", bleed: 2}")));
    }

    /** Springs and limits that end in the air, or join a piece to itself. */
    @Test
    void jointsJoinTwoPiecesAndEndOnWood() throws IOException {
        for (int i = 0; i < 8; i++) {
            Point away = new Point(0, 100).plus(new Point(ofAnySize(250, 1e5), 0).turned(between(0, 2 * Math.PI)));
            String end = place(away.x(), away.y());
            assertThat(joint(new EndsHeld(), "{part: body, at: tail}", "{part: leg-near, at: " + end + "}"))
                    .as(end)
                    .isTrue();
        }
        assertThat(joint(new EndsHeld(), "{part: body, at: tail}", "{part: leg-near, at: knee}"))
                .isFalse();
        assertThat(joint(new JointsAct(), "{part: body, at: tail}", "{part: leg-near, at: knee}"))
                .isFalse();
        assertThat(joint(new JointsAct(), "{part: body, at: tail}", "{part: wing-near, at: wing-dowel-1}"))
                .isTrue();
    }

    private static boolean joint(Question question, String from, String to) throws IOException {
        return isNo(Nonsense.ask(
                question,
                () -> replaced(
                        "heron",
                        "heron/figure.yaml",
                        "pins:\n",
                        "springs:\n  pull: {from: " + from + ", to: " + to
                                + ", stiffness: 0.001, free: 60}\npins:\n")));
    }

    @Test
    void aTorqueTurnsWhatMovesAndTeethKeepTheirPlay() throws IOException {
        for (String part : new String[] {"leg-near", "leg-far"}) {
            assertThat(Nonsense.ask(
                            new FullStroke(),
                            () -> replaced(
                                    "heron",
                                    "heron/figure.yaml",
                                    "pins:\n",
                                    "torques:\n  wind: {on: " + part + ", moment: 1}\npins:\n")))
                    .as(part)
                    .isEqualTo(Nonsense.Verdict.REFUSED);
        }
        for (int i = 0; i < 8; i++) {
            double play = random.nextBoolean() ? -ofAnySize(0.01, 10) : ofAnySize(0.6, 10);
            assertThat(teeth(play)).as("play %s", play).isEqualTo(Nonsense.Verdict.REFUSED);
            assertThat(teeth(between(0, 0.4))).isEqualTo(Nonsense.Verdict.PASSES);
        }
    }

    private static Nonsense.Verdict teeth(double play) throws IOException {
        return Nonsense.ask(
                new ToothShapes(),
                () -> replaced(
                        "windmill",
                        "windmill/figure.yaml",
                        "pressure-angle: 25}",
                        "pressure-angle: 25, play: " + number(play) + "}"));
    }
}
