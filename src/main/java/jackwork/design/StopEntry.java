package jackwork.design;

import java.util.List;

@About("Limits how far one part turns against another about a pin they share.")
public record StopEntry(
        @About("Two parts; the first one's turning against the second is limited.")
        @Names(value = NameKind.PART, orGround = true)
        List<String> between,

        @About("The pin they share.") @Names(NameKind.PIN) String pin,

        @About("Least angle from the drawn position, counter-clockwise positive.")
        @Quantity(unit = "deg", least = -360, most = 0, why = "the position drawn, 0, lies between from and to")
        double from,

        @About("Greatest angle.")
        @Quantity(unit = "deg", least = 0, most = 360, why = "the position drawn, 0, lies between from and to")
        double to)
        implements Entry {

    @Override
    public void check(String path, Around around) {
        if (between.size() != 2 || between.get(0).equals(between.get(1))) {
            around.problem(path + ".between", "expected two parts");
        }
    }
}
