package jackwork.drawing;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An SVG file's text, before any XML parser has seen it: decoded strictly, its size bounded, and
 * free of a document type that declares anything.
 */
record SvgSource(String file, String text) {

    /** Larger than any drawing a maker saves by hand; what would be far larger is a picture, not an outline. */
    static final int MOST_BYTES = 20_000_000;

    /** Enough to hold an XML declaration with its encoding. */
    private static final int DECLARATION_BYTES = 200;

    private static final Pattern DECLARED_ENCODING = Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([^\"']+)");

    static SvgSource of(String file, byte[] svg) {
        if (svg.length > MOST_BYTES) {
            throw new DrawingException(
                    file,
                    1,
                    1,
                    "this file has " + svg.length + " bytes, at most " + MOST_BYTES
                            + " are read; remove embedded pictures or split the drawing");
        }
        if (svg.length > 2 && (svg[0] & 0xff) == 0x1f && (svg[1] & 0xff) == 0x8b) {
            throw new DrawingException(
                    file, 1, 1, "this file is compressed (svgz), plain SVG was expected; save it as plain SVG");
        }
        SvgSource source = new SvgSource(file, decoded(file, svg));
        source.refuseDeclarations();
        return source;
    }

    DrawingException problem(int offset, String problem) {
        int end = Math.max(0, Math.min(offset, text.length()));
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < end; i++) {
            if (text.charAt(i) == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        return new DrawingException(file, line, text.codePointCount(lineStart, end) + 1, problem);
    }

    private static String decoded(String file, byte[] svg) {
        Charset charset = charset(file, svg);
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(svg)).toString();
            // One kind of line end, as the XML parser will make it, so that its offsets are these.
            return (text.startsWith("\uFEFF") ? text.substring(1) : text)
                    .replace("\r\n", "\n")
                    .replace('\r', '\n');
        } catch (CharacterCodingException e) {
            throw new DrawingException(
                    file, 1, 1, "the text is not valid " + charset + "; save the drawing as plain SVG in UTF-8");
        }
    }

    private static Charset charset(String file, byte[] svg) {
        if (svg.length >= 2
                && ((svg[0] == (byte) 0xfe && svg[1] == (byte) 0xff)
                        || (svg[0] == (byte) 0xff && svg[1] == (byte) 0xfe))) {
            return StandardCharsets.UTF_16;
        }
        String start = new String(svg, 0, Math.min(svg.length, DECLARATION_BYTES), StandardCharsets.ISO_8859_1);
        Matcher declared = DECLARED_ENCODING.matcher(start);
        if (!declared.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            return Charset.forName(declared.group(1));
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new DrawingException(
                    file, 1, 1, "encoding \"" + declared.group(1) + "\" is not known; save the drawing in UTF-8");
        }
    }

    /**
     * A document type may stand (old editors write one) but not an internal subset, the only way to
     * declare entities in the file itself. What it names outside is never fetched.
     */
    private void refuseDeclarations() {
        int at = 0;
        while (true) {
            at = afterSpace(at);
            if (text.startsWith("<!--", at)) {
                at = after("-->", at);
            } else if (text.startsWith("<?", at)) {
                at = after("?>", at);
            } else {
                break;
            }
        }
        if (!text.startsWith("<!DOCTYPE", at)) {
            return;
        }
        char quote = 0;
        for (int i = at; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == '[') {
                throw problem(
                        i,
                        "the document type declares entities of its own, which are not read for safety;"
                                + " save the drawing as plain SVG, or remove the lines from <!DOCTYPE to ]>");
            } else if (c == '>') {
                return;
            }
        }
    }

    private int afterSpace(int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    private int after(String end, int from) {
        int at = text.indexOf(end, from);
        return at < 0 ? text.length() : at + end.length();
    }
}
