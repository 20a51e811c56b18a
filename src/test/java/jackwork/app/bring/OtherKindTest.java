package jackwork.app.bring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a maker drops is called by its name, whatever the file is called. */
class OtherKindTest {

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "'  0\n  SECTION\n  2\nENTITIES\n' | a DXF drawing | SVG",
                "'999\nmade by hand\n0\r\nSECTION\r\n2\r\nHEADER\r\n' | a DXF drawing | SVG",
                "AC1027 | a DWG drawing | SVG",
                "'%PDF-1.7\n' | a PDF | SVG",
                "'%!PS-Adobe-3.0 EPSF-3.0' | a PostScript drawing | SVG",
                "'GIF89a' | a GIF picture | PNG",
                "'8BPS' | a PSD picture | PNG",
                "'RIFF1234WEBPVP8 ' | a WebP picture | PNG",
                "'<!DOCTYPE html><p>' | a web page | SVG",
                "'solid part\n facet normal 0 0 1\n' | an STL solid | SVG",
                "'\u00ff\u00d8\u00ff\u00e0' | a JPEG picture | PNG",
            })
    void isTold(String begins, String words, String saveAs) {
        byte[] bytes = begins.getBytes(StandardCharsets.ISO_8859_1);
        BringException refused = OtherKind.of(bytes).orElseThrow().refused("bird.svg");
        assertThat(refused).hasMessage("bird.svg is " + words + "; that is not read yet");
        assertThat(refused.remedy()).contains(saveAs);
    }

    @Test
    void drawingsAndPicturesThatAreReadAreNoOtherKind() {
        for (String text : new String[] {
            "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
            "<?xml version=\"1.0\"?>\n<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"x\">\n<svg/>",
            "\u0089PNG\r\n\u001a\n",
            "",
            "nonsense"
        }) {
            assertThat(OtherKind.of(text.getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
        }
    }
}
