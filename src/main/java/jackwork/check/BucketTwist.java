package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.CoinWorks;
import jackwork.stock.Uncertain;
import java.util.List;

/**
 * Tilting on its rod, the bucket does not reach its neighbours: diametral clearance c over bearing
 * length L tilts it by c/L, which at its reach is a sideways shift.
 */
final class BucketTwist implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        double shift = works.shift(works.clearance());
        double margin = works.sideGap() - shift;
        Uncertain running = subject.assembly().workshop().fits().running();
        Spread spread = new Spread(margin)
                .add(
                        "running clearance",
                        running,
                        fit -> works.sideGap() - works.shift(works.clearance() + fit - running.value()));
        double wantedBearing = works.clearance() * works.reach() / works.sideGap();
        return List.of(Finding.ask(Topic.BUCKET_TWIST, say("Can the {} twist on its rod and jam?", works.bucketWord()))
                .answer(spread.status(), shift, works.sideGap(), margin, "mm")
                .at(new Where(subject.assembly().body(works.bucket()).name(), 0.0, works.lip()))
                .because(
                        say(
                                "tilting in its clearance moves its far end {} sideways, {} are free",
                                mm(shift),
                                mm(works.sideGap())),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say("Widen its bearing well beyond {}, or leave more side gap.", mm(wantedBearing)),
                        "shift = c/L · reach = " + Words.number(works.clearance()) + "/" + Words.number(works.bearing())
                                + " · " + Words.number(works.reach()) + " = " + Words.number(shift) + " mm",
                        spread));
    }
}
