package jackwork.check;

import static jackwork.check.Measure.mm;
import static jackwork.check.Sentence.say;

import jackwork.parts.CoinWorks;
import jackwork.stock.Coin;
import jackwork.stock.Uncertain;
import java.util.List;

/** Each coin goes through the slot, both ways across. */
final class CoinFitsSlot implements Question {

    @Override
    public List<Finding> ask(Subject subject) {
        return subject.coins().stream().map(coin -> find(subject, coin)).toList();
    }

    private static Finding find(Subject subject, Coin coin) {
        CoinWorks works = subject.assembly().coinWorks();
        boolean tight = works.slotWidth() - coin.thickness() < works.slotLength() - coin.diameter();
        double value = tight ? coin.thickness() : coin.diameter();
        double limit = tight ? works.slotWidth() : works.slotLength();
        double play = CoinSlotPlay.of(works, coin);
        Uncertain kerf = subject.assembly().workshop().laser().kerf();
        Spread spread = new Spread(play).add("kerf", kerf, k -> play + k - kerf.value());
        String side = tight ? "thickness" : "diameter";
        return Finding.ask(Topic.COIN_FITS_SLOT, coin.code(), say("Does {} go through the slot?", coin.code()))
                .answer(spread.status(), value, limit, play, "mm")
                .at(new Where("slot", null, null))
                .because(
                        say("{}'s {} leaves {} of play", coin.code(), side, mm(play)),
                        spread.status() == Status.PASS
                                ? Sentence.NOTHING
                                : say(tight ? "Make the slot wider." : "Make the slot longer."),
                        "play = slot " + Words.number(limit) + " − " + side + " " + Words.number(value) + " = "
                                + Words.number(play) + " mm",
                        spread);
    }
}
