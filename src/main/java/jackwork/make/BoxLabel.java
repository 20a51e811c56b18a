package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.LabelPdf;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import jackwork.stock.Coins;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/** The label of a piece: what it is, which coins it takes, who made it, and the caution that goes with it. */
public final class BoxLabel {

    /** Sign before whole units, word after hundredths; currencies not here are written by their code. */
    private record Signs(String whole, String hundredth) {}

    private static final Map<String, Signs> SIGNS = Map.of(
            "EUR", new Signs("€", " c"),
            "GBP", new Signs("£", "p"),
            "USD", new Signs("$", "¢"));

    private BoxLabel() {}

    /** PDF. */
    public static byte[] pdf(Assembly assembly) {
        WorkshopFile workshop = assembly.workshop();
        List<LabelPdf.Field> fields = List.of(
                new LabelPdf.Field("Maker", Objects.requireNonNullElse(workshop.maker(), "")),
                new LabelPdf.Field("Contact", Objects.requireNonNullElse(workshop.contact(), "")),
                new LabelPdf.Field("Serial no.", ""));
        return LabelPdf.write(
                assembly.name(),
                List.of(takes(assembly.artwork().coins())),
                fields,
                Cautions.FOR_THE_PIECE,
                workshop.paperOrUsual());
    }

    /** "Takes 20 c, 50 c, €1, €2." */
    static String takes(List<String> codes) {
        return "Takes "
                + codes.stream()
                        .map(code -> words(Coins.catalogue().find(code).orElseThrow()))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private static String words(Coin coin) {
        Signs signs = SIGNS.get(coin.currency());
        BigDecimal value = coin.denomination();
        if (signs == null) {
            return coin.currency() + " " + value.toPlainString();
        }
        return value.compareTo(BigDecimal.ONE) < 0
                ? value.movePointRight(2).stripTrailingZeros().toPlainString() + signs.hundredth()
                : signs.whole() + value.stripTrailingZeros().toPlainString();
    }
}
