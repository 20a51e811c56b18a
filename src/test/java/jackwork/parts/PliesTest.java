package jackwork.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jackwork.DemoCopy;
import jackwork.design.DesignReader;
import jackwork.drawing.Drawing;
import jackwork.drawing.Paper;
import jackwork.drawing.SvgReader;
import jackwork.make.Pack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The heron's head made of two plies, where it was of one. */
class PliesTest {

    @TempDir
    private Path folder;

    private Path heron;

    @BeforeEach
    void copy() throws IOException {
        heron = DemoCopy.at(folder.resolve("demo")).resolve("heron");
    }

    private void plies(String words) throws IOException {
        Path file = heron.resolve("figure.yaml");
        String text = Files.readString(file);
        String thick = text.replaceFirst("(?m)^(  head: *\\{stock: birch-3, layer: )\\d+", words);
        assertThat(thick).isNotEqualTo(text);
        Files.writeString(file, thick);
    }

    @Test
    void eachPlyWeighsAndLiesBehindTheOther() throws IOException {
        Assembly thin = Assembler.assemble(DesignReader.read(heron));
        plies("$17, plies: 2");
        Assembly thick = Assembler.assemble(DesignReader.read(heron));
        Body before = thin.body(thin.bodyOf("head"));
        Body after = thick.body(thick.bodyOf("head"));
        Part head = after.parts().get(0);
        Part second = after.parts().get(1);
        assertThat(second.name()).isEqualTo("head-ply-2");
        assertThat(second.layer()).isEqualTo(head.layer() - 1);
        assertThat(second.holes()).isEqualTo(head.holes()).isNotEmpty();
        assertThat(second.engraving()).isEmpty();
        double ply = head.section().area() * head.arealDensity();
        assertThat(wood(after) - wood(before)).isCloseTo(ply, within(1e-9));
    }

    private static double wood(Body body) {
        return body.mass() - body.lumps().stream().mapToDouble(Lump::mass).sum();
    }

    @Test
    void eachPlyIsCut() throws IOException {
        plies("$17, plies: 2");
        Path out = folder.resolve("out");
        Pack.write(DesignReader.read(heron), out, new Pack.Wish(1, Paper.A4), name -> {});
        Set<String> cut = new HashSet<>();
        try (var files = Files.list(out)) {
            for (Path file : files.filter(f -> f.getFileName().toString().matches("birch.*[.]svg"))
                    .toList()) {
                Drawing sheet = SvgReader.read(file.getFileName().toString(), Files.readAllBytes(file));
                cut.addAll(sheet.outlines().keySet());
            }
        }
        assertThat(cut).contains("head", "head-ply-2");
        assertThat(Files.readString(out.resolve("parts.csv"))).contains("head-ply-2,head,");
    }

    @Test
    void morePliesThanLayersAreRefused() throws IOException {
        plies("$11, plies: 3");
        assertThatThrownBy(() -> DesignReader.read(heron))
                .hasMessageContaining("figure.yaml")
                .hasMessageContaining("read 3, but behind layer 1 there is room for 1 more at most");
    }
}
