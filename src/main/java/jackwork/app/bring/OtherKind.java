package jackwork.app.bring;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Kinds of file that makers drop and that are not read, told by how they begin: a name can say anything.
 *
 * @param words what it is
 * @param picture whether it is made of pixels, not of lines
 */
record OtherKind(String words, boolean picture) {

    /** So many bytes are looked at. */
    private static final int BEGINNING = 4096;

    private static final String SAVE_AS_SVG =
            "Open it in your drawing program, save it as plain SVG, and drop that here.";
    private static final String SAVE_AS_PNG = "Save it as PNG, whose edges stay sharp, and drop that here.";

    private record Sign(Pattern begins, OtherKind kind) {

        static Sign lines(String begins, String words) {
            return new Sign(Pattern.compile(begins, Pattern.DOTALL), new OtherKind(words, false));
        }

        static Sign pixels(String begins, String words) {
            return new Sign(Pattern.compile(begins, Pattern.DOTALL), new OtherKind(words, true));
        }
    }

    /** Bytes as letters of Latin-1. */
    private static final List<Sign> SIGNS = List.of(
            // Comments may stand before the first section.
            Sign.lines(
                    "(?:\u00ef\u00bb\u00bf)?(?:\\s*999\\r?\\n[^\\n]*\\n)*\\s*0\\s*\\r?\\n\\s*SECTION\\b.*",
                    "a DXF drawing"),
            Sign.lines("[A-Za-z]{1,10} Binary DXF\\r\\n.*", "a DXF drawing"),
            Sign.lines("AC10\\d\\d.*", "a DWG drawing"),
            Sign.lines("%PDF-.*", "a PDF"),
            Sign.lines("(?:%!PS|\u00c5\u00d0\u00d3\u00c6).*", "a PostScript drawing"),
            Sign.lines("\u00d7\u00cd\u00c6\u009a.*", "a WMF drawing"),
            Sign.lines("\\x01\\x00\\x00\\x00.{36} EMF.*", "an EMF drawing"),
            Sign.lines("RIFF.{4}CDR.*", "a CDR drawing"),
            Sign.lines("solid [^<]*\\bfacet\\b.*", "an STL solid"),
            Sign.lines("PK\\x03\\x04.*", "a zip archive, or a document that is one"),
            Sign.lines("\\s*(?i:<!doctype html|<html)\\b.*", "a web page"),
            Sign.pixels("\u00ff\u00d8\u00ff.*", "a JPEG picture"),
            Sign.pixels("GIF8.*", "a GIF picture"),
            Sign.pixels("RIFF.{4}WEBP.*", "a WebP picture"),
            Sign.pixels("(?:II\\*\\x00|MM\\x00\\*).*", "a TIFF picture"),
            Sign.pixels("BM.{4}\\x00\\x00\\x00\\x00.*", "a BMP picture"),
            Sign.pixels(".{4}ftyp(?:heic|heix|mif1|msf1|avif).*", "a picture as telephones take it"),
            Sign.pixels("8BPS.*", "a PSD picture"));

    /** What a file is, where it is one of these. */
    static Optional<OtherKind> of(byte[] bytes) {
        String begins =
                new String(Arrays.copyOf(bytes, Math.min(bytes.length, BEGINNING)), StandardCharsets.ISO_8859_1);
        return SIGNS.stream()
                .filter(sign -> sign.begins().matcher(begins).matches())
                .map(Sign::kind)
                .findFirst();
    }

    BringException refused(String file) {
        return new BringException(
                file + " is " + words + "; that is not read yet", picture ? SAVE_AS_PNG : SAVE_AS_SVG);
    }
}
