package jackwork.motion;

import jackwork.design.DesignReader;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismCompiler;
import jackwork.parts.Assembler;
import java.nio.file.Path;

/** The demo heron as the benchmarks use it. */
final class Heron {

    private Heron() {}

    /** Read and compiled afresh; run in the project's folder. */
    static Mechanism mechanism() {
        return MechanismCompiler.compile(Assembler.assemble(DesignReader.read(Path.of("demo", "heron"))));
    }
}
