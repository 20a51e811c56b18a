package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.design.DesignReader;
import jackwork.parts.Assembler;
import jackwork.parts.Assembly;
import jackwork.parts.Part;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is put on comes from the front: nothing goes on that would have to pass behind what stands. */
@Tag("quick")
class BuildOrderTest {

    @ParameterizedTest
    @ValueSource(strings = {"heron", "lamplighter", "windmill", "cobbler"})
    void everyPartGoesOnFromTheFront(String name) {
        Assembly assembly = Assembler.assemble(DesignReader.read(Path.of("demo", name)));
        List<Part> standing = new ArrayList<>();
        for (BuildOrder.Stack stack : BuildOrder.of(assembly)) {
            for (Part part : stack.parts()) {
                for (Part other : standing) {
                    if (other.layer() > part.layer()) {
                        assertThat(part.drawn().sharedArea(other.drawn()))
                                .as(part.name() + " of " + stack.name() + " behind " + other.name())
                                .isZero();
                    }
                }
            }
            standing.addAll(stack.parts());
        }
        assertThat(standing).containsExactlyInAnyOrderElementsOf(assembly.parts());
    }

    /** The heron's legs stand between its wings: the body cannot be glued up beforehand. */
    @Test
    void aBodyAroundAnotherIsGluedInPlace() {
        Assembly heron = Assembler.assemble(DesignReader.read(Path.of("demo/heron")));
        List<BuildOrder.Stack> order = BuildOrder.of(heron);
        assertThat(order.stream().filter(stack -> stack.body().equals("body"))).hasSizeGreaterThan(1);
        assertThat(order.stream().filter(stack -> stack.body().equals("lever"))).hasSize(1);
    }
}
