package jackwork.builds;

import static jackwork.check.Sentence.say;

import jackwork.check.Finding;
import jackwork.check.Measure;
import jackwork.check.Sentence;
import jackwork.check.Status;
import jackwork.check.Subject;
import jackwork.check.Topic;
import jackwork.check.Where;
import jackwork.check.Words;
import jackwork.geometry.Wanted;
import jackwork.motion.coin.CoinCycle;
import jackwork.motion.coin.CycleResult;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.coin.Visit;
import jackwork.motion.model.CoinDrop;
import jackwork.motion.time.Press;
import jackwork.parts.Assembly;
import jackwork.parts.Stopping;
import jackwork.parts.TurningEnd;
import jackwork.parts.Variation;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The slowest press that still throws each coin, against how slowly people press: in time, from the coin in the slot
 * until it is below the bucket. Lever and bucket lie to that side of their holes on which kicker and lip are farthest apart. Whether
 * quicker presses throw it as well is for the builds to say.
 */
public final class ThrownClear {

    /** Slower presses than this share of the slowest that people make are not tried. */
    private static final double SLOWEST = 0.5;

    /** The slowest press is told within so much. */
    private static final double CLOSE = 1.1;

    private final Assembly assembly;
    private final Uncertain people;

    private ThrownClear(Assembly assembly) {
        this.assembly = assembly;
        this.people = assembly.workshop().handlingOrGuess().pressSpeed();
    }

    /** One finding for each coin. */
    public static List<Finding> ask(Subject subject) {
        ThrownClear thrown = new ThrownClear(subject.assembly());
        return subject.coins().parallelStream().map(thrown::find).toList();
    }

    /**
     * What was found out.
     *
     * @param slowest press that throws it, mm/s; infinite when none that people make does
     * @param atLeast whether slower ones do as well, and were not tried
     * @param by the piece that decided it
     */
    private record Answer(Status status, double slowest, boolean atLeast, Tries by) {}

    private Finding find(Coin coin) {
        Answer answer = answer(coin);
        Double slowest = Double.isFinite(answer.slowest) ? answer.slowest : null;
        return Finding.ask(
                        Topic.COIN_THROWN_CLEAR,
                        coin.code(),
                        say(
                                "Does a slow press throw {} out of the {}?",
                                coin.code(),
                                assembly.coinWorks().bridges() ? "gap" : "bucket"))
                .answer(answer.status, slowest, people.low(), slowest == null ? null : people.low() - slowest, "mm/s")
                .at(new Where("kicker", 1.0, assembly.coinWorks().lip()))
                .because(why(answer), remedy(answer), formula());
    }

    /** Tried with all against it first: what passes so needs no other try. */
    private Answer answer(Coin coin) {
        double slowest = SLOWEST * people.low();
        Tries against = tries(coin, true);
        if (against.throwsIt(slowest)) {
            return new Answer(Status.PASS, slowest, true, against);
        }
        if (against.throwsIt(people.low())) {
            return new Answer(Status.PASS, against.between(slowest, people.low()), false, against);
        }
        Tries numbered = tries(coin, false);
        boolean throwsNumbered = numbered.throwsIt(people.low());
        Tries deciding = throwsNumbered ? against : numbered;
        double found = deciding.throwsIt(people.high())
                ? deciding.between(people.low(), people.high())
                : Double.POSITIVE_INFINITY;
        // What could not be computed says neither yes nor no.
        Status status = throwsNumbered || !numbered.computed ? Status.DOUBTFUL : Status.FAIL;
        return new Answer(status, found, false, deciding);
    }

    private Sentence why(Answer answer) {
        Measure low = speed(people.low());
        Measure found = speed(answer.slowest);
        if (answer.status == Status.PASS) {
            return answer.atLeast
                    ? say(
                            "a press of {} still does, with play, wear and stops against it, and slower ones were not tried; people"
                                    + " press with {} and more",
                            found,
                            low)
                    : say(
                            "a press of {} still does, with play, wear and stops against it; people press with {} and more",
                            found,
                            low);
        }
        if (!answer.by.computed) {
            return say("not every press could be computed");
        }
        Measure high = speed(people.high());
        boolean some = Double.isFinite(answer.slowest);
        if (answer.status == Status.DOUBTFUL) {
            return some
                    ? say(
                            "with the play against it a press of {} does, the slowest of people; with wear, wider holes and early"
                                    + " stops as well only one of {} and more",
                            low,
                            found)
                    : say(
                            "with the play against it a press of {} does, the slowest of people; with wear, wider holes and early"
                                    + " stops as well none up to {}: {}",
                            low,
                            high,
                            missed(answer.by));
        }
        return some
                ? say(
                        "with the play against it only a press of {} and more does; people press with {} and more",
                        found,
                        low)
                : say("with the play against it no press up to {} does: {}", high, missed(answer.by));
    }

    private static String missed(Tries tries) {
        return tries.missed.map(stage -> Cause.of(stage).words()).orElse("");
    }

    private static Sentence remedy(Answer answer) {
        if (answer.status == Status.PASS) {
            return Sentence.NOTHING;
        }
        return answer.by.missed.filter(stage -> stage != CycleStage.THROWN).isPresent()
                ? say("See first to what happens before it is thrown.")
                : say("Lengthen the kicker, lower the lip, or let the lever go farther.");
    }

    private String formula() {
        return "let fall and pressed in time, kicker and lip apart by the play of both pins, "
                + Words.number(play(ThrownClear::leverPlay, false) + play(ThrownClear::bucketPlay, false))
                + " mm; against it: play "
                + Words.number(play(ThrownClear::leverPlay, true) + play(ThrownClear::bucketPlay, true))
                + " mm (its holes at the wide end), the coin "
                + Words.number(-Unknowns.COIN_WIDTH.low()) + " mm smaller, both stops "
                + Words.number(-Unknowns.STOP_PLACE.low()) + " mm early; presses of "
                + Words.number(SLOWEST * people.low()) + " to " + Words.number(people.high()) + " mm/s, "
                + Words.number(people.low()) + " the slowest that people make";
    }

    private static Measure speed(double value) {
        return Measure.of(value, "mm/s");
    }

    /** @param against whether all that can be off is */
    private Tries tries(Coin coin, boolean against) {
        // Of a bucket it is known on which side the lip is; what a gate's coin leans on is not told so easily.
        double[] sides = assembly.coinWorks().bridges()
                ? new double[] {1, -1}
                : new double[] {assembly.coinWorks().sense()};
        return new Tries(
                Arrays.stream(sides)
                        .mapToObj(side -> piece(coin, against, side))
                        .toList(),
                !assembly.coinWorks().bridges());
    }

    private Piece piece(Coin coin, boolean against, double side) {
        Build build = new Build(assembly);
        build.leverSide = side * share(ThrownClear::leverPlay, against);
        build.bucketSide = -side * share(ThrownClear::bucketPlay, against);
        if (against) {
            build.coinWidth = Unknowns.COIN_WIDTH.low();
            for (TurningEnd.Kind early : List.of(TurningEnd.Kind.LEVER_PRESSED, TurningEnd.Kind.BUCKET_TIPPED)) {
                assembly.ends().stream()
                        .map(Stopping::end)
                        .filter(end -> end.kind() == early)
                        .forEach(end -> build.drawnBack.put(end.id(), Unknowns.STOP_PLACE.low()));
            }
        }
        build.settle();
        return new Piece(BuildTrial.rig(build), BuildTrial.drop(build, coin), build.pressForce);
    }

    private static double leverPlay(Assembly assembly) {
        return assembly.leverBearing().play();
    }

    private static double bucketPlay(Assembly assembly) {
        return assembly.bucketBearing().play();
    }

    /** By how much more than all its play as numbered a body lies to the side. */
    private double share(ToDoubleFunction<Assembly> play, boolean against) {
        double numbered = play.applyAsDouble(assembly);
        return numbered > 0 ? play(play, against) / numbered : 0;
    }

    /** All play to one side, mm; where all is against it with what its numbers add, as a root sum of squares. */
    private double play(ToDoubleFunction<Assembly> play, boolean against) {
        double numbered = Math.max(0, play.applyAsDouble(assembly));
        if (!against) {
            return numbered;
        }
        double squares = 0;
        for (Variation variation : Variation.ofHoles(assembly, false)) {
            double more = Arrays.stream(new double[] {
                                variation.number().low(), variation.number().high()
                            })
                            .map(value -> play.applyAsDouble(variation.with().apply(assembly, value)))
                            .max()
                            .orElse(numbered)
                    - numbered;
            squares += Math.max(0, more) * Math.max(0, more);
        }
        return numbered + Math.sqrt(squares);
    }

    /** With its coin, and the force of a press. */
    private record Piece(CycleRig rig, CoinDrop drop, double force) {

        CycleResult press(double speed) {
            return CoinCycle.until(CycleStage.THROWN, rig, Visit.of(drop, new Press(force, speed)));
        }
    }

    /** Presses of any speed, one after the other; all of some pieces must throw the coin. */
    private static final class Tries {

        private final List<Piece> pieces;
        private final boolean freesBefore;
        /** What happened first instead at the last press that did not throw it. */
        private Optional<CycleStage> missed = Optional.empty();

        private boolean computed = true;

        /** @param freesBefore whether the lever is free before anyone presses: what is not then, no press throws */
        Tries(List<Piece> pieces, boolean freesBefore) {
            this.pieces = pieces;
            this.freesBefore = freesBefore;
        }

        boolean throwsIt(double speed) {
            if (freesBefore
                    && missed.filter(stage -> stage.compareTo(CycleStage.FREES) <= 0)
                            .isPresent()) {
                return false;
            }
            for (Piece piece : pieces) {
                Wanted.goOn();
                CycleResult result = piece.press(speed);
                computed &= result.computed();
                if (!result.times().containsKey(CycleStage.THROWN)) {
                    missed = result.firstMissed();
                    return false;
                }
            }
            return true;
        }

        /** @param low a press that does not throw it, {@code high} one that does */
        double between(double low, double high) {
            double not = low;
            double does = high;
            while (does > not * CLOSE) {
                double middle = Math.sqrt(not * does);
                if (throwsIt(middle)) {
                    does = middle;
                } else {
                    not = middle;
                }
            }
            return does;
        }
    }
}
