package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.design.CaseEntry;
import jackwork.parts.CoinWorks;
import jackwork.parts.Layers;
import jackwork.stock.Coin;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The slot lies above the coin's way within the case, takes one coin at a time, and is as wide as the gap behind it. */
final class SlotPlaced implements Question {

    /** A coin that starts so far beside its gap still finds it, mm: common practice, no source. */
    private static final double BESIDE = 1;
    /** Above the lip, or the case's lid, a slot may stand so high, mm: common practice, no source. */
    private static final double HIGH = 50;

    private static final double TALLEST = 500;

    /** @param margin mm, below 0 is wrong */
    private record Try(double value, double limit, double margin, Sentence why, Sentence remedy) {}

    @Override
    public List<Finding> ask(Subject subject) {
        CoinWorks works = subject.assembly().coinWorks();
        List<Try> tries = new ArrayList<>();
        tries.add(width(subject, works));
        tries.add(oneAtATime(subject, works));
        CaseEntry housing = subject.design().box().housing();
        if (housing != null) {
            tries.add(inCase(works, housing));
            tries.add(underLid(subject, works, housing));
        }
        tries.add(above(works));
        tries.add(over(subject, works));
        tries.add(notTooHigh(
                works, housing == null ? works.lip().y() + TALLEST : housing.floor() + housing.height() + HIGH));
        tries.add(sideGap(subject, works));
        Try worst = tries.stream().min(Comparator.comparingDouble(Try::margin)).orElseThrow();
        boolean fits = worst.margin() >= 0;
        return List.of(Finding.ask(Topic.SLOT_PLACED, say("Do slot, gap and case belong together?"))
                .answer(fits ? Status.PASS : Status.FAIL, worst.value(), worst.limit(), worst.margin(), "mm")
                .at(new Where("slot", null, works.slotAt()))
                .because(
                        worst.why(),
                        fits ? Sentence.NOTHING : worst.remedy(),
                        Words.number(worst.value()) + " mm against " + Words.number(worst.limit()) + " mm"));
    }

    private static Try width(Subject subject, CoinWorks works) {
        double most = subject.assembly().coinGap() + BESIDE;
        return new Try(
                works.slotWidth(),
                most,
                most - works.slotWidth(),
                say("the slot is {} wide, the gap behind it {}", mm(works.slotWidth()), mm(most - BESIDE)),
                say("Make slot.width as wide as the gap in which the coin runs: a wider one lets it fall beside."));
    }

    /** Two of the smallest side by side go through it together. */
    private static Try oneAtATime(Subject subject, CoinWorks works) {
        double most =
                2 * subject.coins().stream().mapToDouble(Coin::diameter).min().orElse(Double.POSITIVE_INFINITY);
        return new Try(
                works.slotLength(),
                most,
                most - works.slotLength(),
                say("the slot is {} long, two of the smallest coins together {}", mm(works.slotLength()), mm(most)),
                say("Make slot.length little longer than the largest coin, so that one goes in at a time."));
    }

    private static Try inCase(CoinWorks works, CaseEntry housing) {
        double left = works.slotAt().x() - works.slotLength() / 2 - housing.left();
        double right = housing.left() + housing.width() - works.slotAt().x() - works.slotLength() / 2;
        double room = Math.min(left, right);
        return new Try(
                room,
                0,
                room,
                room >= 0
                        ? say("the slot's end lies {} within the case", mm(room))
                        : say("the slot's end lies {} outside the case", mm(-room)),
                say("Move slot.at, or make the case wider: a coin goes in through the lid."));
    }

    /** What falls free under the lid for more than half its width turns, or stops across, before anything leads it. */
    private static Try underLid(Subject subject, CoinWorks works, CaseEntry housing) {
        double most = subject.coins().stream().mapToDouble(Coin::diameter).min().orElse(0) / 2;
        double drop = housing.floor() + housing.height() - works.slotAt().y();
        return new Try(
                drop,
                most,
                most - drop,
                say("the slot's mark lies {} under the lid, half of the smallest coin is {}", mm(drop), mm(most)),
                say("Make the case lower, or move slot.at up into the lid, so that the chute begins there."));
    }

    private static Try above(CoinWorks works) {
        double drop = works.slotAt().y() - works.lip().y();
        return new Try(
                drop,
                0,
                drop,
                say("the slot is {} {} the lip", mm(Math.abs(drop)), drop >= 0 ? "above" : "below"),
                say("Move slot.at above the {}: the coin falls there.", works.bucketWord()));
    }

    /** A chute may lead a coin so far aside as it is wide; farther it falls beside what it should lie on. */
    private static Try over(Subject subject, CoinWorks works) {
        double coin = subject.coins().stream().mapToDouble(Coin::diameter).max().orElse(0);
        double from = Math.min(
                Math.min(works.toe().x(), works.heel().x()), works.lip().x());
        double to = Math.max(
                Math.max(works.toe().x(), works.heel().x()), works.lip().x());
        double aside =
                Math.max(0, Math.max(from - works.slotAt().x(), works.slotAt().x() - to));
        return new Try(
                aside,
                coin,
                coin - aside,
                say("the slot stands {} beside the floor that the coin should fall on", mm(aside)),
                say("Move slot.at over the floor between heel and lip."));
    }

    private static Try notTooHigh(CoinWorks works, double most) {
        double high = works.slotAt().y();
        return new Try(
                high,
                most,
                most - high,
                say("the slot is {} high, measured from the origin", mm(high)),
                say("Move slot.at down into the lid, or make the case higher."));
    }

    private static Try sideGap(Subject subject, CoinWorks works) {
        double all = Layers.of(subject.assembly().parts()).total();
        return new Try(
                works.sideGap(),
                all,
                all - works.sideGap(),
                say("the side gap is {}, all layers together {} thick", mm(works.sideGap()), mm(all)),
                say("Write side-gap as the free space to the nearest part beside the {}.", works.bucketWord()));
    }
}
