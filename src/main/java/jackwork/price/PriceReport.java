package jackwork.price;

import jackwork.check.Finding;
import jackwork.check.Status;
import jackwork.check.Topic;
import jackwork.stock.Basis;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Will it pay? Everything that a page or a reader needs; amounts in the workshop's currency, rounded once.
 *
 * @param asked price on a shelf that it is held against
 * @param askedAs where that comes from
 * @param minutes of hands for a good piece
 * @param tasks most minutes first
 * @param lines of what a good piece costs; they add up to the floor
 * @param laddersOtherVat the same where the maker's registration for VAT is the other way about
 * @param lostVat input VAT in the floor that is not got back
 * @param cash for whole sheets, spools and bags, before the batch begins
 * @param waysPrice of the finished piece, at which the ways are held side by side: as asked, else the least by any channel
 * @param unused timings whose names are no operation
 */
public record PriceReport(
        int formatVersion,
        String design,
        String verdict,
        List<Finding> findings,
        String currency,
        int places,
        String rounding,
        int pieces,
        BigDecimal asked,
        String askedAs,
        HourCost hour,
        double minutes,
        List<Task> tasks,
        List<MachineTime> machines,
        List<StageYield> yields,
        List<CostLine> lines,
        List<CostGroup> groups,
        BigDecimal floor,
        BigDecimal lostVat,
        List<CashLine> cash,
        BigDecimal cashTotal,
        Bands bands,
        List<Ladder> ladders,
        List<Ladder> laddersOtherVat,
        List<Backwards> backwards,
        List<WageStep> wages,
        List<BatchSize> batches,
        List<Offer> quicker,
        BigDecimal waysPrice,
        List<WayResult> ways,
        List<Sensitivity> sensitivity,
        List<KnownNumber> numbers,
        int guesses,
        List<String> unused,
        List<String> cautions) {

    private static final int FORMAT_VERSION = 1;
    private static final String ROUNDING =
            "34 digits inside; shown half up to the currency's smallest coin; lines shown"
                    + " with their sum are rounded so that they add up to it";
    private static final List<String> CAUTIONS = List.of(
            "These figures are no tax, legal or business advice. VAT, trading income, collecting and selling are"
                    + " settled"
                    + " by local rules; ask the office that knows them.",
            "A guess stays a guess: see which number moves the answer most, and replace that one first.");

    /** Answers the question. */
    public static PriceReport of(PriceQuestion question) {
        Rates rates = question.rates();
        String currency = question.currency();
        int places = Money.places(currency);
        Costing costing = Costing.of(question.batch(), rates, question.pieces());
        BigDecimal given = question.asked();
        BigDecimal asked = given == null ? question.bands().most() : given;
        List<Ends> numbers = Ends.ofPiece(costing);
        List<Finding> findings = PayFindings.ask(costing, numbers, asked, currency, places);
        List<CostLine> lines = lines(costing, places);
        List<CashLine> cash = cash(costing, places);
        List<Ladder> ladders = Ladder.of(costing, question.bands(), asked, places);
        BigDecimal waysPrice = given != null
                ? given
                : ladders.stream()
                        .map(Ladder::shelf)
                        .min(Comparator.naturalOrder())
                        .orElse(asked);
        return new PriceReport(
                FORMAT_VERSION,
                question.design(),
                verdict(findings),
                findings,
                currency,
                places,
                ROUNDING,
                question.pieces(),
                Money.shown(asked, places),
                given == null ? "the dearest of the bands" : "as asked",
                HourCost.of(rates, places),
                costing.minutes(),
                costing.tasks(),
                MachineTime.of(costing, places),
                StageYield.of(costing.yields()),
                lines,
                CostGroup.of(lines),
                Money.shown(costing.floor(), places),
                Money.shown(costing.lostVat(), places),
                cash,
                CashLine.sum(cash),
                question.bands().shown(places),
                ladders,
                otherVat(costing, question.bands(), asked, places),
                Backwards.of(costing, asked, places, currency),
                WageStep.of(costing, places),
                BatchSize.of(costing, asked, places),
                Quicker.of(costing, question.edits()).stream()
                        .map(offer -> offer.shown(places))
                        .toList(),
                waysPrice,
                Ways.of(costing, waysPrice, question.facts(), places),
                sensitivity(costing, numbers, asked, currency, places),
                KnownNumber.of(rates),
                (int) rates.all().values().stream()
                        .filter(number -> number.basis() == Basis.GUESS)
                        .count(),
                question.unused(),
                CAUTIONS);
    }

    private static List<Ladder> otherVat(Costing costing, Bands bands, BigDecimal asked, int places) {
        Rates rates = costing.rates();
        Rates other = rates.with("vat.registered", rates.yes("vat.registered") ? 0 : 1);
        return Ladder.of(costing.with(other), bands, asked, places);
    }

    private static List<CostLine> lines(Costing costing, int places) {
        List<CostLine> exact = costing.lines();
        List<BigDecimal> amounts =
                Money.shown(exact.stream().map(CostLine::amount).toList(), places);
        List<CostLine> lines = new ArrayList<>();
        for (int i = 0; i < exact.size(); i++) {
            lines.add(exact.get(i).with(amounts.get(i)));
        }
        return lines;
    }

    private static List<CashLine> cash(Costing costing, int places) {
        return CashLine.of(costing).stream()
                .map(line -> new CashLine(
                        line.item(),
                        line.need(),
                        line.have(),
                        line.unit(),
                        line.packs(),
                        Money.shown(line.amount(), places)))
                .toList();
    }

    private static List<Sensitivity> sensitivity(
            Costing costing, List<Ends> numbers, BigDecimal asked, String currency, int places) {
        List<Sensitivity> all = new ArrayList<>();
        all.add(Sensitivity.of("What a good piece costs", costing, numbers, Costing::floor, currency, places));
        Channel best = PayFindings.best(costing, asked);
        if (best != null) {
            all.add(Sensitivity.of(
                    "What it must cost through " + best.name(),
                    costing,
                    numbers,
                    other -> {
                        Channel then = other.channel(best);
                        return then.possible() ? then.shelf(Ladder.net(other.floor(), other.rates())) : asked;
                    },
                    currency,
                    places));
        }
        return all;
    }

    /** Of the price by the channel that leaves most: whether a dearer channel fails decides nothing. */
    private static String verdict(List<Finding> findings) {
        Status worst = findings.stream()
                .filter(finding -> finding.topic() == Topic.PAY_COST)
                .map(Finding::status)
                .findFirst()
                .orElse(Status.FAIL);
        return switch (worst) {
            case PASS, OPEN -> "pays";
            case DOUBTFUL -> "doubtful";
            case FAIL -> "fails";
        };
    }
}
