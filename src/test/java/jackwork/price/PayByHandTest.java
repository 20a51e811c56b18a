package jackwork.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** docs/pay-by-hand.md, line by line: an hour, a good piece, its cash, the ladder and back. */
@Tag("quick")
class PayByHandTest {

    private static final String PIECE = """
            times: {glue-layer: 2, pack: 4.6875, set-up-laser: 16, try: 10}
            pay:
              wage: 12
              on-costs: 25
              productive: 75
              overhead: 1.20
              profit: 20
              energy: 0.50
              offcut: 50
              learning: {rate: 80, ends: 100}
              laser: {price: 4000, hours: 2000, upkeep: 0.50, power: 1, attention: 0}
              printer: {price: 300, hours: 1000, upkeep: 0, power: 0, attention: 0, speed: 20}
              prices: {sheet: {price: 30}, filament: {price: 20, holds: 1000}, carton: {price: 1, holds: 1}}
              vat: {registered: REGISTERED, rate: 25, paid: 25}
              yields: {cut: 80, print: 50, dress: 100, build: 100, first-time: 80, rework: 25, scrap: 50, salvage: 3}
              design: {hours: 30, pieces: 100}
              channels:
                outright: {shop: {markup: 60, vat: 25, reclaims: false}, other: {markup: 60, vat: 25, reclaims: true}}
                commission: {gallery: {share: 30}}
                web: {post: {fixed: 1, postage: 4, fee: 30}}
                fair: {stall: {stall: 50, travel: 10, hours: 5, fee: 4, pieces: 10}}
            """;

    private static Batch batch(Map<String, Double> have) {
        return new Batch(
                4,
                List.of(new LaidSheet("ply", 0.2, 1200, 0), new LaidSheet("ply", 0.2, 1200, 0.5)),
                List.of(
                        new Item("ply", "sheet", 2, 0.1, "sheets"),
                        new Item("filament", "filament", 40, 0, "g"),
                        new Item("carton", "carton", 4, 0, "pieces")),
                40,
                Map.of("glue-layer", 20.0, "pack", 4.0, "set-up-laser", 1.0, "try", 4.0),
                have);
    }

    private static Costing piece(boolean registered) {
        Rates rates = Cases.rates(PIECE.replace("REGISTERED", Boolean.toString(registered)));
        return Costing.of(batch(Map.of()), rates, 4);
    }

    private static Channel channel(boolean registered, String name) {
        return Channels.of(piece(registered).rates()).stream()
                .filter(channel -> channel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void isAbout(BigDecimal amount, double byHand) {
        assertThat(amount.doubleValue()).isCloseTo(byHand, within(0.00006));
    }

    private static double line(String group, String name) {
        return piece(false).lines().stream()
                .filter(line -> line.group().equals(group) && line.name().equals(name))
                .findFirst()
                .orElseThrow()
                .amount()
                .doubleValue();
    }

    @Test
    void anHour() {
        assertThat(piece(false).rates().hourCost()).isEqualByComparingTo("20");
    }

    @Test
    void whatHandsLearn() {
        Learning learning = new Learning(0.8, 100);
        assertThat(learning.average(4)).isCloseTo(0.64, within(1e-12));
        assertThat(learning.total(4)).isCloseTo(2.56, within(1e-12));
        assertThat(new Learning(0.8, 2).total(4)).isCloseTo(2.8, within(1e-12));
        assertThat(new Learning(0.8, 2).average(4)).isCloseTo(0.7, within(1e-12));
    }

    @Test
    void intoAStageForOneGoodPiece() {
        Yields yields = piece(false).yields();
        assertThat(yields.into(Stage.PACK)).isEqualTo(1);
        assertThat(yields.into(Stage.BUILD)).isCloseTo(1.1111, within(0.00006));
        assertThat(yields.into(Stage.PRINT)).isCloseTo(2.2222, within(0.00006));
        assertThat(yields.into(Stage.CUT)).isCloseTo(1.3889, within(0.00006));
    }

    @Test
    void everyLineOfAGoodPiece() {
        assertThat(line("stock", "ply")).isCloseTo(3.6458, within(0.00006));
        assertThat(line("stock", "filament")).isCloseTo(0.4444, within(0.00006));
        assertThat(line("stock", "carton")).isCloseTo(1, within(0.00006));
        assertThat(line("set-up", "test pieces")).isCloseTo(0.15, within(0.00006));
        assertThat(line("machines", "laser")).isCloseTo(0.6944, within(0.00006));
        assertThat(line("machines", "printer")).isCloseTo(0.3333, within(0.00006));
        assertThat(line("hands", "build")).isCloseTo(2.3704, within(0.00006));
        assertThat(line("hands", "try")).isCloseTo(3.7037 + 1.8519, within(0.00011));
        assertThat(line("hands", "pack")).isCloseTo(1, within(0.00006));
        assertThat(line("set-up", "hands")).isCloseTo(1.3333, within(0.00006));
        assertThat(line("overhead", "for the hours at work")).isCloseTo(0.6156, within(0.00006));
        assertThat(line("design", "its share of inventing")).isCloseTo(6, within(0.00006));
        assertThat(line("salvage", "from pieces given up")).isCloseTo(-0.3333, within(0.00006));
        isAbout(piece(false).floor(), 22.8095);
        assertThat(piece(false).minutes()).isCloseTo(30.7778, within(0.00006));
        assertThat(piece(false).machineHour("laser")).isEqualByComparingTo("3");
    }

    @Test
    void vatThatIsGotBackIsNoCost() {
        isAbout(piece(true).floor(), 21.5559);
        isAbout(piece(false).lostVat(), 1.2536);
        assertThat(piece(true).lostVat()).isEqualByComparingTo("0");
    }

    @Test
    void cashForWholeSheetsAndSpools() {
        assertThat(CashLine.sum(CashLine.of(piece(false)))).isEqualByComparingTo("42");
        Costing stocked = piece(false).with(batch(Map.of("ply", 1.0, "filament", 100.0)));
        assertThat(CashLine.sum(CashLine.of(stocked))).isEqualByComparingTo("16");
    }

    @Test
    void channels() {
        BigDecimal net = BigDecimal.valueOf(20);
        isAbout(Ladder.net(piece(false).floor(), piece(false).rates()), 28.5119);
        assertThat(channel(true, "shop").shelf(net)).isEqualByComparingTo("50");
        assertThat(channel(true, "other").shelf(net)).isEqualByComparingTo("40");
        assertThat(channel(true, "other").formula()).contains("= 0.375");
        assertThat(channel(true, "gallery").shelf(net)).isEqualByComparingTo("40");
        isAbout(channel(false, "gallery").shelf(net), 28.5714);
        assertThat(channel(true, "post").shelf(net)).isEqualByComparingTo("50");
        isAbout(channel(false, "stall").shelf(net), 33.3333);
    }

    private static Ladder ladder(String name) {
        return Ladder.of(piece(false), Bands.of(List.of()), BigDecimal.valueOf(45), 2).stream()
                .filter(ladder -> ladder.channel().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** 28.5119 / 0.7 through the gallery; (28.5119 + 12) / 0.96 at the stall. */
    @Test
    void theLadderFromTheFloorToTheShelf() {
        for (Ladder ladder : Ladder.of(piece(false), Bands.of(List.of()), BigDecimal.valueOf(45), 2)) {
            assertThat(ladder.rungs().get(0).adds()).isEqualByComparingTo("22.81");
            assertThat(ladder.rungs().get(1).reaches()).isEqualByComparingTo("28.51");
            BigDecimal sum = ladder.rungs().stream().map(Rung::adds).reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(sum).isEqualByComparingTo(ladder.shelf());
        }
        assertThat(ladder("gallery").shelf()).isEqualByComparingTo("40.73");
        assertThat(ladder("gallery").band()).isEqualTo("a present");
        assertThat(ladder("gallery").breakEven()).isNull();
        assertThat(ladder("gallery").breakEvenAsked()).isNull();
        assertThat(ladder("stall").shelf()).isEqualByComparingTo("42.20");
        // 120 / (42.20 - 4 % - 22.81) = 6.8 and 120 / (45 - 4 % - 22.81) = 5.9: whole pieces.
        assertThat(ladder("stall").breakEven()).isEqualByComparingTo("7");
        assertThat(ladder("stall").breakEvenAsked()).isEqualByComparingTo("6");
        assertThat(ladder("shop").rungs())
                .extracting(Rung::name)
                .containsSubsequence("the shop's markup", "the shop's VAT");
    }

    /** Each unit of wage adds 1.354938 to the floor: 22.8095 at 12, 39.0688 at 24. */
    @Test
    void whatAWageAsksFor() {
        List<WageStep> steps = WageStep.of(piece(false), 2);
        assertThat(steps)
                .extracting(step -> step.wage().doubleValue())
                .containsExactly(0.0, 6.0, 9.0, 12.0, 15.0, 18.0, 24.0);
        assertThat(steps.get(3).floor()).isEqualByComparingTo("22.81");
        assertThat(steps.get(3).shelves().get("gallery")).isEqualByComparingTo("40.73");
        assertThat(steps.get(6).floor()).isEqualByComparingTo("39.07");
        assertThat(steps.get(6).shelves().get("gallery")).isEqualByComparingTo("69.77");
    }

    @Test
    void goodOnesStageByStage() {
        List<StageYield> stages = StageYield.of(piece(false).yields());
        assertThat(stages).extracting(StageYield::stage).containsExactly(Stage.values());
        assertThat(stages).allSatisfy(stage -> {
            assertThat(stage.good()).isEqualTo(piece(false).yields().of(stage.stage()));
            assertThat(stage.into()).isEqualTo(piece(false).yields().into(stage.stage()));
        });
    }

    /** 40 through the gallery leaves 22.40: 29.6 minutes, and it takes 30.8. Of 5 nothing is left for hands. */
    @Test
    void backInWords() {
        Backwards back = back(40);
        assertThat(back.mayTake()).isEqualByComparingTo("29.6");
        assertThat(back.words())
                .startsWith(
                        "to sell at 40.00 EUR through gallery a piece may take 30 minutes; it takes 31; these 5 steps"
                                + " take 100 % of the time");
        assertThat(back.inTheWay()).hasSize(5);
        assertThat(back(5).words()).startsWith("at 5.00 EUR through gallery stock, machines and fees alone cost more");
    }

    private static Backwards back(int shelf) {
        return Backwards.of(piece(false), BigDecimal.valueOf(shelf), 2, "EUR").stream()
                .filter(back -> back.channel().equals("gallery"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void breakEvenAtTheStall() {
        FairDay day = FairDay.of(piece(false).rates(), "stall");
        assertThat(day.cost()).isEqualByComparingTo("120");
        assertThat(day.pieces(BigDecimal.valueOf(45), new BigDecimal("19.20")))
                .hasValueSatisfying(pieces -> assertThat(pieces).isEqualByComparingTo("5"));
        assertThat(day.pieces(BigDecimal.valueOf(20), new BigDecimal("19.20"))).isEmpty();
    }

    @Test
    void backFromTheShelf() {
        Channel gallery = channel(false, "gallery");
        BigDecimal forty = BigDecimal.valueOf(40);
        assertThat(gallery.net(forty)).isEqualByComparingTo("28");
        BigDecimal mayCost = Backwards.mayCost(gallery.net(forty), piece(false).rates());
        assertThat(mayCost).isEqualByComparingTo("22.4");
        isAbout(piece(false).withoutMinutes(), 11.9347);
        assertThat(Backwards.mayTake(piece(false), mayCost).doubleValue()).isCloseTo(29.6, within(0.05));
        isAbout(piece(false).aWage(), 1.354938);
        assertThat(Backwards.paysWage(piece(false), gallery, forty).doubleValue())
                .isCloseTo(11.70, within(0.005));
    }

    @Test
    void linesAddUp() {
        BigDecimal each = new BigDecimal("1.005");
        assertThat(Money.shown(List.of(each, each, each), 2))
                .containsExactly(new BigDecimal("1.01"), new BigDecimal("1.01"), new BigDecimal("1.00"));
    }
}
