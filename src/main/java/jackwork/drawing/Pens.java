package jackwork.drawing;

/** How each kind of path is drawn. */
public record Pens(Pen engrave, Pen inside, Pen outside, Pen mark) {

    /**
     * @param colour 0xRRGGBB
     * @param width mm
     */
    public record Pen(int colour, double width) {
        public Pen {
            if (colour < 0 || colour > 0xffffff || !(width > 0 && width < 10)) {
                throw new IllegalArgumentException(String.format(
                        "pen of colour %x and width %s mm; a colour from 0 to ffffff and a width from 0 to 10 mm"
                                + " was expected",
                        colour, width));
            }
        }
    }

    /**
     * Ochre, plum, dark teal and slate grey: told apart in print and by most colour-blind eyes, since they
     * differ in lightness too. A workshop whose machine goes by colour sets its own.
     */
    public static Pens standard() {
        return new Pens(new Pen(0xb9770e, 0.1), new Pen(0x7d2e68, 0.1), new Pen(0x0b4f54, 0.1), new Pen(0x7b8794, 0.1));
    }

    Pen of(CutKind kind) {
        return switch (kind) {
            case ENGRAVE -> engrave;
            case INSIDE -> inside;
            case OUTSIDE -> outside;
            case MARK -> mark;
        };
    }
}
