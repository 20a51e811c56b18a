package jackwork.price;

import java.util.Optional;

/** Pictures printed and glued on in place of paint. */
final class PrintedPictures implements Alternative {

    @Override
    public Optional<Offer> offer(Costing costing) {
        return Quicker.instead(
                costing,
                "paint-part",
                (work, painted) -> {
                    work.merge("picture", painted, Double::sum);
                    work.merge("print-page", painted, Double::sum);
                },
                "printed-pictures",
                "Printed pictures",
                "Draw the paint once and print it for every piece, a page a part; paper weighs, and its edge shows.",
                "picture-hours");
    }
}
