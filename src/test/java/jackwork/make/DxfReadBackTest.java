package jackwork.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jackwork.design.DesignReader;
import jackwork.drawing.CutKind;
import jackwork.drawing.CutPath;
import jackwork.drawing.CutShape;
import jackwork.drawing.CutSheet;
import jackwork.drawing.DxfWriter;
import jackwork.geometry.Point;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The heron's sheets as DXF, read by ezdxf (Debian's python3-ezdxf), a general library that is not ours. */
class DxfReadBackTest {

    /** Prints one entity a line: kind, layer, then numbers. */
    private static final String READER = """
            import ezdxf, sys
            drawing = ezdxf.readfile(sys.argv[1])
            print('AUDIT', len(drawing.audit().errors))
            for e in drawing.modelspace():
                if e.dxftype() == 'CIRCLE':
                    print('CIRCLE', e.dxf.layer, e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
                elif e.dxftype() == 'POLYLINE':
                    numbers = [c for v in e.vertices for c in (v.dxf.location.x, v.dxf.location.y)]
                    print('RING' if e.is_closed else 'LINE', e.dxf.layer, *numbers)
                else:
                    print(e.dxftype(), e.dxf.layer)
            """;

    private static List<String> read(Path file) throws IOException, InterruptedException {
        Process reader = new ProcessBuilder("/usr/bin/python3", "-c", READER, file.toString())
                .redirectErrorStream(true)
                .start();
        String out = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(reader.waitFor()).as(out).isZero();
        return out.lines().toList();
    }

    private static List<Double> numbers(CutShape shape) {
        List<Double> numbers = new ArrayList<>();
        if (shape instanceof CutShape.Round round) {
            numbers.addAll(List.of(
                    round.circle().centre().x(),
                    round.circle().centre().y(),
                    round.circle().radius()));
        } else {
            List<Point> points = shape instanceof CutShape.Ring ring ? ring.points() : ((CutShape.Line) shape).points();
            points.forEach(point -> numbers.addAll(List.of(point.x(), point.y())));
        }
        return numbers;
    }

    @Test
    void everyPathComesBack(@TempDir Path folder) throws IOException, InterruptedException {
        var heron = DesignReader.read(Path.of("demo/heron"));
        for (PlannedSheet planned :
                Pack.of(Makings.of(heron), 1, SheetSearch.usual()).sheets()) {
            CutSheet sheet = planned.sheet();
            Path file = folder.resolve(sheet.title() + ".dxf");
            Files.write(file, DxfWriter.write(sheet));
            List<String> lines = read(file);
            assertThat(lines.get(0)).isEqualTo("AUDIT 0");
            List<String> entities = lines.stream()
                    .skip(1)
                    .filter(line -> !line.startsWith("TEXT"))
                    .toList();
            List<CutPath> expected = new ArrayList<>();
            for (CutKind kind : CutKind.values()) {
                expected.addAll(sheet.paths().stream()
                        .filter(path -> path.kind() == kind)
                        .toList());
            }
            assertThat(entities).hasSameSizeAs(expected);
            for (int i = 0; i < expected.size(); i++) {
                String[] words = entities.get(i).split(" ");
                CutShape shape = expected.get(i).shape();
                assertThat(words[0])
                        .isEqualTo(
                                shape instanceof CutShape.Round
                                        ? "CIRCLE"
                                        : shape instanceof CutShape.Ring ? "RING" : "LINE");
                assertThat(words[1])
                        .isEqualTo(List.of("engrave", "inside-cuts", "outside-cuts", "marks")
                                .get(List.of(CutKind.values())
                                        .indexOf(expected.get(i).kind())));
                List<Double> numbers = numbers(shape);
                assertThat(words).hasSize(numbers.size() + 2);
                for (int k = 0; k < numbers.size(); k++) {
                    assertThat(Double.parseDouble(words[k + 2])).isCloseTo(numbers.get(k), within(6e-5));
                }
            }
        }
    }
}
