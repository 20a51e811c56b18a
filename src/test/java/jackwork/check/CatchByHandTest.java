package jackwork.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.geometry.Point;
import jackwork.parts.Body;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The catch and the coin's moment of the heron's box, worked out from moments about a pivot with nothing of the question's own. */
@Tag("quick")
class CatchByHandTest {

    private static final double GRAVITY = 9.80665e-3;

    private final Subject subject = Subject.of(DesignReader.read(Path.of("demo/heron")));

    /**
     * The finger's moment about the lever's pivot is the tooth's; the tooth presses straight down on the strut with N, and
     * rubs with µ N to the opening side at most; bucket's weight and N about its pivot must keep it closed. Both holes are
     * bored wider than their rods by the running fit, so that tooth and pivot may each lie half of that to the worse side.
     */
    @Test
    void theStrongestPressClosesTheCatch() {
        var works = subject.assembly().coinWorks();
        var lever = subject.assembly().lever();
        double press = subject.assembly().workshop().finger().strongest().value();
        double fingerArm = Math.abs(lever.press().x() - lever.pivot().x());
        double toothArm = Math.abs(works.tooth().x() - lever.pivot().x());
        double n = press * fingerArm / toothArm;
        Body bucket = subject.assembly().body(works.bucket());
        double closing = works.sense() * (bucket.centre().x() - works.pivot().x()) * bucket.mass() * GRAVITY;
        double rubbing = works.catchFriction().coefficient().low()
                * n
                * (works.strut().y() - works.pivot().y());
        double room = subject.design().workshop().fits().running().value();
        double pressed = (works.sense() * (works.tooth().x() - works.pivot().x()) - room / 2 - room / 2) * n;
        Finding finding = new CatchHolds().ask(subject).get(0);
        assertThat(finding.margin()).isCloseTo((pressed + closing + rubbing) / n, within(1e-9));
    }

    /** A coin that lies free in the bucket: its weight times the way of its centre from the pivot. */
    @Test
    void aFreeCoinTipsByItsWeightAndPlace() {
        var works = subject.assembly().coinWorks();
        Coin coin = Coins.catalogue().find("EUR-2").orElseThrow();
        Point centre = CoinSeat.centre(works, coin.radius(), 0.5);
        double free = -works.sense() * (centre.x() - works.pivot().x()) * coin.mass() * GRAVITY;
        boolean leans = centre.distance(works.kicker()) < coin.radius() * 1.001;
        double moment = CoinSeat.coinMoment(works, coin.mass(), coin.radius(), 0.5);
        if (leans) {
            // Three forces on the coin: the kicker takes part of its weight, and the floor's push turns the bucket.
            Point kick = centre.minus(works.kicker()).times(1 / centre.distance(works.kicker()));
            Point floor = CoinSeat.up(works).turned(works.tip() / 2);
            double weight = coin.mass() * GRAVITY;
            // Across the kicker's push only floor and weight act.
            Point across = new Point(-kick.y(), kick.x());
            double push = weight * across.y() / floor.dot(across);
            Point arm = centre.minus(works.pivot());
            assertThat(moment)
                    .isCloseTo(works.sense() * -(arm.x() * floor.y() - arm.y() * floor.x()) * push, within(1e-9));
        } else {
            assertThat(moment).isCloseTo(free, within(1e-9));
        }
    }
}
