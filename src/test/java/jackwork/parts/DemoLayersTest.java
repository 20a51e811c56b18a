package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.DesignReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The demo's drawings as wood: enough of it around every hole, and no two parts of one layer in one place at rest. */
@Tag("quick")
class DemoLayersTest {

    /** Wood between a rod's hole and the nearest edge, mm; common practice, no source. */
    private static final double LEAST_WOOD = 2.5;

    private final Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));

    @Test
    void everyHoleHasWoodAroundIt() {
        List<String> thin = new ArrayList<>();
        int seen = 0;
        for (Part part : assembly.parts()) {
            for (Hole hole : part.holes()) {
                seen++;
                double wood = part.drawn().distanceToEdge(hole.circle().centre())
                        - hole.circle().radius();
                if (!part.drawn().contains(hole.circle().centre()) || wood < LEAST_WOOD) {
                    thin.add(part.name() + " around " + hole.joint() + ": " + wood);
                }
            }
        }
        assertThat(seen).isGreaterThan(40);
        assertThat(thin).isEmpty();
    }

    @Test
    void partsOfOneLayerDoNotOverlapAtRest() {
        List<String> clashes = new ArrayList<>();
        List<Part> parts = assembly.parts();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Part a = parts.get(i);
                Part b = parts.get(j);
                if (a.layer() == b.layer() && a.drawn().sharedArea(b.drawn()) > 1e-6) {
                    clashes.add(a.name() + " and " + b.name() + ": " + a.drawn().sharedArea(b.drawn()) + " mm²");
                }
            }
        }
        assertThat(clashes).isEmpty();
    }
}
