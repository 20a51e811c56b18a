package jackwork.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A sheet of paper in a printer, mm. ISO 216 trims A4 to 210 x 297 mm, A3 to 297 x 420 mm; Letter is
 * 8.5 x 11 in (ANSI/ASME Y14.1, size A).
 */
public record Paper(String name, double width, double height) {

    public static final Paper A4 = new Paper("A4", 210, 297);
    public static final Paper A3 = new Paper("A3", 297, 420);
    public static final Paper LETTER = new Paper("Letter", 8.5 * 25.4, 11 * 25.4);

    /** Those that a workshop may name. */
    public static final List<Paper> ALL = List.of(A4, A3, LETTER);

    /** For messages: "A4, A3, Letter". */
    public static final String NAMES =
            String.join(", ", ALL.stream().map(Paper::name).toList());

    /** However it is spelt: A4, a4. */
    public static Optional<Paper> named(String name) {
        return ALL.stream().filter(one -> one.name().equalsIgnoreCase(name)).findFirst();
    }

    /** The same paper lying on its side. */
    public Paper turned() {
        return new Paper(name, /* width= */ height, /* height= */ width);
    }
}
