package jackwork.motion;

import jackwork.Compared;

/** The chain's second within 0.01 mm. */
@Compared(
        what = "a second of a hanging chain of ten links, its end within 0.01 mm of a fine reference",
        peer = "the same chain by dyn4j at its own largest step, halved from 1 ms, that ends as near")
public class SecondToHundredthBenchmark extends ChainSecond {

    public SecondToHundredthBenchmark() {
        super(0.01);
    }
}
