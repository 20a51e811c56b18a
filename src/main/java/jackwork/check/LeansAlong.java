package jackwork.check;

import static jackwork.check.Measure.degrees;
import static jackwork.check.Sentence.say;

import jackwork.geometry.Point;
import jackwork.parts.Assembly;
import jackwork.parts.Body;
import jackwork.parts.CoinWorks;
import jackwork.stock.Uncertain;
import java.util.List;

/**
 * On a table that leans along the mechanism's plane, gravity turns against the box: how far it may lean before the empty
 * bucket no longer falls back by itself, {@code M g (x cos φ − y sin φ) > µ r W} with x and y of its centre from the
 * pivot, toward closing and up.
 */
final class LeansAlong implements Question {

    /** Degrees; nobody sets a box down more askew. */
    private static final double MOST = 45;

    private static final int HALVINGS = 30;

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        Uncertain tilt = assembly.workshop().handlingOrGuess().tilt();
        double limit = Math.max(Math.abs(tilt.low()), Math.abs(tilt.high()));
        double value = lean(assembly);
        Spread spread = subject.balanceSpread(changed -> lean(changed) - limit);
        return List.of(Finding.ask(
                        Topic.LEANS_ALONG,
                        say(
                                "How far may the table lean before the {} stays open?",
                                assembly.coinWorks().bucketWord()))
                .answer(spread.status(), value, limit, value - limit, "deg")
                .at(Where.bucket(assembly))
                .because(
                        say(
                                "the empty {} falls back by itself on a table that leans by up to {}{}; tables lean by {}"
                                        + " degrees",
                                assembly.coinWorks().bucketWord(),
                                degrees(value).bare(),
                                (value == MOST ? " degrees and more" : " degrees"),
                                degrees(limit).bare()),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Move the counterweight farther out, or bring its centre down nearer the pivot."),
                        "M g (x cos φ − y sin φ) = µ r W at φ = " + Words.number(value)
                                + " degrees, least over the tip",
                        spread));
    }

    /** The lesser of both ways, degrees; 0 where it does not close on a level table. */
    private static double lean(Assembly assembly) {
        return Math.min(lean(assembly, 1), lean(assembly, -1));
    }

    private static double lean(Assembly assembly, int way) {
        if (closing(assembly, way * MOST) > 0) {
            return MOST;
        }
        double low = 0;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (closing(assembly, way * middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** What closes the empty bucket less its friction, least over the tip, N·mm. */
    private static double closing(Assembly assembly, double degrees) {
        CoinWorks works = assembly.coinWorks();
        Body bucket = assembly.body(works.bucket());
        double angle = Math.toRadians(degrees);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= CoinSeat.STEPS; i++) {
            Point arm = CoinSeat.tipped(works, bucket.centre(), (double) i / CoinSeat.STEPS)
                    .minus(works.pivot());
            double closing = works.sense() * arm.x() * Math.cos(angle) - arm.y() * Math.sin(angle);
            least = Math.min(least, CoinSeat.weight(bucket.mass()) * closing);
        }
        return least - CoinSeat.frictionMoment(assembly, 0);
    }
}
