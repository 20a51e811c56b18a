package jackwork.design;

/**
 * @param part the lever
 * @param pin its pin in the box
 * @param press where the finger pushes, straight down
 * @param turn how far a full press turns it, degrees, without sign
 */
@About("The drive: stroke 0 is the lever as drawn, stroke 1 the lever turned by `throw`.")
public record LeverEntry(
        String part,
        String pin,
        Place press,
        @Key("throw") @Unit("deg") double turn) {}
