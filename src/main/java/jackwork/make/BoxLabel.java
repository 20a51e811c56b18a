package jackwork.make;

import jackwork.design.WorkshopFile;
import jackwork.drawing.LabelPdf;
import jackwork.drawing.Paper;
import jackwork.parts.Assembly;
import jackwork.stock.Coin;
import java.util.List;
import java.util.Objects;

/** The label of a piece: what it is, which coins it takes, who made it, and the caution that goes with it. */
public final class BoxLabel {

    private BoxLabel() {}

    /** PDF. */
    public static byte[] pdf(Assembly assembly, List<Coin> coins, Paper paper) {
        WorkshopFile workshop = assembly.workshop();
        List<LabelPdf.Field> fields = List.of(
                new LabelPdf.Field("Maker", Objects.requireNonNullElse(workshop.maker(), "")),
                new LabelPdf.Field("Contact", Objects.requireNonNullElse(workshop.contact(), "")),
                new LabelPdf.Field("Serial no.", ""));
        return LabelPdf.write(
                assembly.name(), List.of("Takes " + CoinWords.of(coins) + "."), fields, Cautions.FOR_THE_PIECE, paper);
    }
}
