package jackwork.motion;

import jackwork.Compared;

/** The chain's second within 0.1 mm. */
@Compared(
        what = "a second of a hanging chain of ten links, its end within 0.1 mm of a fine reference",
        peer = "the same chain by dyn4j at its own largest step, halved from 1 ms, that ends as near")
public class SecondToTenthBenchmark extends ChainSecond {

    public SecondToTenthBenchmark() {
        super(0.1);
    }
}
