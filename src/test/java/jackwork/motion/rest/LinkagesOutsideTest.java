package jackwork.motion.rest;

import static jackwork.motion.model.Mechanism.GROUND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.Published;
import jackwork.geometry.Point;
import jackwork.motion.model.FourBar;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismBuilder;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Known linkages: what their points must do, by closed form or by theorem; source and reach at each. */
@Tag("outside")
@Tag("quick")
class LinkagesOutsideTest {

    private static final String TABLE = "/jackwork/motion/linkages.csv";
    private static final int TURNS = 3;

    private static Point pointOf(Mechanism mechanism, double[] pose, int body, Point drawn) {
        Mechanism.BodyData data = mechanism.bodies[body];
        return drawn.minus(new Point(data.centreX(), data.centreY()))
                .turned(pose[3 * body + 2])
                .plus(new Point(pose[3 * body], pose[3 * body + 1]));
    }

    /**
     * Peaucellier-Lipkin inversor: OP · OQ = L² − l², an exact identity. Reach: a redundant-looking
     * loop of seven bars, closed by Newton over a large motion.
     */
    @Test
    void peaucellierInverts() {
        double wanted = Published.value(TABLE, 3, "peaucellier");
        double longBar = 5;
        double shortBar = 2;
        // As drawn: O at the origin, P at distance 3.2 on the x axis, Q beyond it.
        double p = 3.2;
        double q = wanted / p;
        double half = (q - p) / 2;
        double height = Math.sqrt(shortBar * shortBar - half * half);
        Point pointP = new Point(p, 0);
        Point pointQ = new Point(q, 0);
        Point a = new Point(p + half, height);
        Point b = new Point(p + half, -height);
        assertThat(a.length()).isCloseTo(longBar, within(1e-12));
        Point centre = new Point(p / 2, 0.4);
        MechanismBuilder builder = new MechanismBuilder().gravity(Point.ORIGIN);
        int oa = builder.body("oa", 1, a.times(0.5), 1);
        int ob = builder.body("ob", 1, b.times(0.5), 1);
        int pa = builder.body("pa", 1, pointP.plus(a).times(0.5), 1);
        int pb = builder.body("pb", 1, pointP.plus(b).times(0.5), 1);
        int qa = builder.body("qa", 1, pointQ.plus(a).times(0.5), 1);
        int qb = builder.body("qb", 1, pointQ.plus(b).times(0.5), 1);
        int crank = builder.body("crank", 1, centre.plus(pointP).times(0.5), 1);
        Mechanism mechanism = builder.pin("o-a", oa, GROUND, Point.ORIGIN, 0, 0)
                .pin("o-b", ob, GROUND, Point.ORIGIN, 0, 0)
                .pin("a1", pa, oa, a, 0, 0)
                .pin("a2", qa, oa, a, 0, 0)
                .pin("b1", pb, ob, b, 0, 0)
                .pin("b2", qb, ob, b, 0, 0)
                .pin("p1", pa, crank, pointP, 0, 0)
                .pin("p2", pb, crank, pointP, 0, 0)
                .pin("q", qa, qb, pointQ, 0, 0)
                .pin("c", crank, GROUND, centre, 0, 0)
                .lever(crank, 0.6, pointP, new Point(0, 1))
                .build();
        PoseSolver solver = new PoseSolver(mechanism);
        for (double u = 0; u <= 1.0001; u += 0.05) {
            assertThat(solver.moveTo(Math.min(1, u))).isTrue();
            Point nowP = pointOf(mechanism, solver.pose(), crank, pointP);
            Point nowQ = pointOf(mechanism, solver.pose(), qa, pointQ);
            assertThat(nowP.length() * nowQ.length()).isCloseTo(wanted, within(1e-9));
            assertThat(nowP.cross(nowQ)).isCloseTo(0, within(1e-9));
        }
    }

    /**
     * Chebyshev's straight-line linkage 4 : 5 : 2: the coupler's middle stays between 4 and
     * 4.009 753 73 while it passes over the ground link (computed from the closed form). Reach: one
     * crossed four-bar over most of its range.
     */
    @Test
    void chebyshevRunsAlmostStraight() {
        double low = Published.value(TABLE, 3, "chebyshev_straight_line", "ground=4;cranks=5;coupler=2;P=midpoint");
        double high = Published.value(TABLE, 3, "chebyshev_straight_line", "same", "ymax over 0<=x<=4");
        FourBar linkage = new FourBar(5, 2, 5, 4);
        // As drawn: coupler level above the middle, cranks crossing.
        double theta = Math.atan2(4, 3);
        Mechanism mechanism =
                linkage.drivenByCrank(theta, -1, Math.toRadians(-50)).build();
        double[] ys = sweep(linkage, mechanism, theta, Math.toRadians(-50));
        Mechanism other = linkage.drivenByCrank(theta, -1, Math.toRadians(50)).build();
        double[] more = sweep(linkage, other, theta, Math.toRadians(50));
        assertThat(Math.min(ys[0], more[0])).isCloseTo(low, within(1e-6));
        assertThat(Math.max(ys[1], more[1])).isCloseTo(high, within(2e-6));
    }

    /** Least and greatest y of the coupler's middle while 0 ≤ x ≤ 4. */
    private static double[] sweep(FourBar linkage, Mechanism mechanism, double theta, double turn) {
        Point middle =
                linkage.crankEnd(theta).plus(linkage.rockerEnd(theta, -1)).times(0.5);
        PoseSolver solver = new PoseSolver(mechanism);
        double[] range = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i <= 4000 && solver.moveTo(i / 4000.0); i++) {
            Point now = pointOf(mechanism, solver.pose(), 1, middle);
            if (now.x() >= 0 && now.x() <= 4) {
                range[0] = Math.min(range[0], now.y());
                range[1] = Math.max(range[1], now.y());
            }
        }
        assertThat(turn).isNotZero();
        return range;
    }

    static Stream<List<String>> grashof() {
        return Published.rows(TABLE).stream()
                .filter(row -> row.get(0).equals("grashof") && !row.get(3).startsWith("special"));
    }

    /**
     * Grashof's criterion (Norton, Design of Machinery, Table 2-4; exact test in the table): whether
     * the input link turns fully, here three times over. Reach: rotatability of the input alone, change-point linkages left
     * out, since both branches meet there.
     */
    @ParameterizedTest
    @MethodSource("grashof")
    void inputTurnsFullyOrNot(List<String> row) {
        double[] links = Stream.of(row.get(1).split(";"))
                .mapToDouble(word -> Double.parseDouble(word.split("=")[1]))
                .toArray();
        boolean full = row.get(6).contains("exact test: True");
        FourBar linkage = new FourBar(links[0], links[1], links[2], links[3]);
        double start = startAngle(linkage);
        Mechanism mechanism =
                linkage.drivenByCrank(start, +1, TURNS * 2 * Math.PI).build();
        StrokeResult result = StrokeSolver.solve(mechanism, TURNS * 360 + 1);
        assertThat(result.events(MotionEvent.Kind.DEAD_POINT).isEmpty()).isEqualTo(full);
        assertThat(result.reach() == 1).isEqualTo(full);
    }

    /** Some input angle at which the linkage can be put together with room to spare. */
    private static double startAngle(FourBar linkage) {
        for (double theta = 0.3; theta < 6.28; theta += 0.1) {
            double diagonal = linkage.crankEnd(theta).distance(new Point(linkage.d, 0));
            if (diagonal > Math.abs(linkage.b - linkage.c) * 1.05 && diagonal < (linkage.b + linkage.c) * 0.95) {
                return theta;
            }
        }
        throw new IllegalStateException("no start");
    }
}
