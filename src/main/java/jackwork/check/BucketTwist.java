package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.Assembly;
import jackwork.parts.Bearing;
import jackwork.parts.CoinWorks;
import jackwork.parts.Variation;
import java.util.ArrayList;
import java.util.List;

/**
 * Tilting on its rod, the bucket does not reach its neighbours: diametral clearance c over bearing
 * length L tilts it by c/L, which at its reach is a sideways shift.
 */
final class BucketTwist implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        Assembly assembly = subject.assembly();
        CoinWorks works = assembly.coinWorks();
        Bearing bearing = assembly.bucketBearing();
        double shift = works.shift(bearing);
        double margin = works.sideGap() - shift;
        Spread spread = new Spread(margin);
        List<Variation> variations = new ArrayList<>(Variation.ofHoles(assembly, false));
        variations.addAll(
                Variation.ofThickness(assembly.body(bearing.pin().runner()).parts()));
        for (Variation variation : variations) {
            spread.add(
                    variation.name(),
                    variation.number(),
                    value -> works.sideGap()
                            - works.shift(
                                    variation.with().apply(assembly, value).bucketBearing()));
        }
        double clearance = bearing.tilt() * bearing.length();
        double wantedBearing = clearance * works.reach() / works.sideGap();
        return List.of(Finding.ask(Topic.BUCKET_TWIST, say("Can the {} twist on its rod and jam?", works.bucketWord()))
                .answer(spread.status(), shift, works.sideGap(), margin, "mm")
                .at(new Where(assembly.body(works.bucket()).name(), 0.0, works.lip()))
                .because(
                        say(
                                "tilting in its clearance moves its far end {} sideways, {} are free",
                                mm(shift),
                                mm(works.sideGap())),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say(
                                        "Let more of its layers turn on the rod, so that the bearing is well beyond {};"
                                                + " fit it closer, or leave more side gap.",
                                        mm(wantedBearing)),
                        "shift = c/L · reach = " + Words.number(clearance) + "/" + Words.number(bearing.length())
                                + " · " + Words.number(works.reach()) + " = " + Words.number(shift) + " mm",
                        spread));
    }
}
