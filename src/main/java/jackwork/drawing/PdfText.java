package jackwork.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Words in a PDF: Liberation Sans, which comes inside PDFBox and goes into the file as far as it is
 * used, so that every printer shows the same and no font of this computer is looked for.
 */
final class PdfText {

    private static final String LIBERATION_SANS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final PDFont font;

    /** The font belongs to one document. */
    PdfText(PDDocument document) {
        try (InputStream in = PDDocument.class.getResourceAsStream(LIBERATION_SANS)) {
            if (in == null) {
                throw new IllegalStateException("this version of PDFBox holds no font at " + LIBERATION_SANS);
            }
            font = PDType0Font.load(document, in, true);
        } catch (IOException e) {
            throw new UncheckedIOException("the font inside PDFBox cannot be read", e);
        }
    }

    PDFont font() {
        return font;
    }

    /** Height of a capital letter over the type size. */
    double capital() {
        return font.getFontDescriptor().getCapHeight() / 1000;
    }

    /** The same words, each letter that the font lacks without its accent, or else as a question mark. */
    String safe(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            String letter = Character.toString(c);
            String bare = Normalizer.normalize(letter, Normalizer.Form.NFKD).replaceAll("\\p{M}", "");
            if (Character.isWhitespace(c)) {
                safe.append(' ');
            } else if (has(letter)) {
                safe.append(letter);
            } else {
                safe.append(!bare.isEmpty() && has(bare) ? bare : "?");
            }
        });
        return safe.toString();
    }

    /** mm at a type size in mm. */
    double width(double size, String text) {
        try {
            return font.getStringWidth(safe(text)) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lines no wider than {@code width} mm, broken between words; a longer word stands alone. */
    List<String> wrapped(double size, double width, String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : safe(text).trim().split(" +")) {
            if (!line.isEmpty() && width(size, line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private boolean has(String text) {
        try {
            font.encode(text);
            return !text.codePoints().anyMatch(Character::isISOControl);
        } catch (IllegalArgumentException e) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
