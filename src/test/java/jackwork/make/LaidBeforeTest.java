package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.geometry.Outline;
import jackwork.layout.LayoutResult;
import jackwork.layout.Layouts;
import jackwork.layout.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What was laid out once is taken again only where the search would find the very same. */
class LaidBeforeTest {

    private static final SheetSearch QUICK = new SheetSearch(40, 0, () -> false, words -> {});

    private final AtomicInteger searches = new AtomicInteger();

    private LayoutResult laid(List<Piece> pieces, double length, double width, SheetSearch search, int share) {
        return LaidBefore.or(pieces, length, width, search, share, () -> {
            searches.incrementAndGet();
            return Layouts.onSheets(pieces, length, width, search.effort("board", pieces.size(), share));
        });
    }

    private static List<Piece> pieces(double side, List<Double> turns, int copies) {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece("long", Outline.rectangle(0, 0, 2 * side, side), turns));
        pieces.addAll(Collections.nCopies(copies, new Piece("square", Outline.rectangle(0, 0, side, side), turns)));
        return pieces;
    }

    @Test
    void theSamePiecesLieAsASearchWouldLayThem() {
        Random random = new Random(11);
        for (int i = 0; i < 10; i++) {
            double side = 20 + 30 * random.nextDouble();
            List<Piece> pieces = pieces(side, List.of(), 1 + random.nextInt(4));
            LayoutResult first = laid(pieces, 300, 200, QUICK, 1);
            assertThat(laid(pieces(side, List.of(), pieces.size() - 1), 300, 200, QUICK, 1))
                    .isSameAs(first);
            assertThat(Layouts.onSheets(pieces, 300, 200, QUICK.effort("board", pieces.size(), 1)))
                    .isEqualTo(first);
        }
        assertThat(searches).hasValue(10);
    }

    @Test
    void whatTheSearchSeesOtherwiseIsSearchedAgain() {
        laid(pieces(31, List.of(), 2), 300, 200, QUICK, 1);
        laid(pieces(31, List.of(0.0, 180.0), 2), 300, 200, QUICK, 1);
        laid(pieces(31, List.of(), 3), 300, 200, QUICK, 1);
        laid(pieces(31.001, List.of(), 2), 300, 200, QUICK, 1);
        laid(pieces(31, List.of(), 2), 299, 200, QUICK, 1);
        laid(pieces(31, List.of(), 2), 300, 199, QUICK, 1);
        laid(pieces(31, List.of(), 2), 300, 200, QUICK, 2);
        laid(pieces(31, List.of(), 2), 300, 200, new SheetSearch(41, 0, () -> false, words -> {}), 1);
        assertThat(searches).hasValue(8);
    }

    @Test
    void whatWasStoppedOrTimedIsNotKept() {
        SheetSearch stopped = new SheetSearch(42, 0, () -> true, words -> {});
        SheetSearch timed = new SheetSearch(0.01, () -> false, words -> {});
        for (SheetSearch search : List.of(stopped, stopped, timed, timed)) {
            laid(pieces(33, List.of(), 2), 300, 200, search, 1);
        }
        assertThat(searches).hasValue(4);
    }
}
