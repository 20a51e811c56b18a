package jackwork.drawing;

import java.nio.charset.StandardCharsets;

/** Drawings for the tests: a 100 x 100 mm page in which one user unit is one mm. */
final class Svg {

    private Svg() {}

    static String page(String content) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"100mm\""
                + " height=\"100mm\" viewBox=\"0 0 100 100\">\n" + content + "\n</svg>\n";
    }

    static Drawing read(String content) {
        return readFile(page(content));
    }

    static Drawing readFile(String svg) {
        return SvgReader.read("heron.svg", svg.getBytes(StandardCharsets.UTF_8));
    }
}
