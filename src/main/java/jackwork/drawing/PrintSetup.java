package jackwork.drawing;

import java.util.List;
import java.util.Optional;

/**
 * How sheets are printed.
 *
 * @param paper absent: each page as large as its sheet needs
 * @param cautions printed at the foot of every page, one line or more each
 */
public record PrintSetup(Optional<Paper> paper, List<String> cautions, Pens pens) {

    public PrintSetup {
        cautions = List.copyOf(cautions);
    }

    public static PrintSetup on(Paper paper, List<String> cautions) {
        return new PrintSetup(Optional.of(paper), cautions, Pens.standard());
    }

    public static PrintSetup asLargeAsNeeded(List<String> cautions) {
        return new PrintSetup(Optional.empty(), cautions, Pens.standard());
    }
}
