package jackwork.drawing;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code (ISO/IEC 18004). */
public final class QrCode {

    /** Light modules around it, as the standard asks. */
    private static final int QUIET = 4;

    private final ByteMatrix modules;

    private QrCode(ByteMatrix modules) {
        this.modules = modules;
    }

    public static QrCode of(String text) {
        try {
            return new QrCode(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException(text.length() + " characters are too many for a QR code", e);
        }
    }

    /** Modules a side. */
    public int size() {
        return modules.getWidth();
    }

    /** Whether a module is dark; those around it are not. */
    public boolean dark(int x, int y) {
        return x >= 0 && y >= 0 && x < size() && y < size() && modules.get(x, y) == 1;
    }

    /** As a picture, one unit a module, dark on light whatever is around it. */
    public String svg() {
        int side = size() + 2 * QUIET;
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + side + ' '
                + side + "\" shape-rendering=\"crispEdges\"><path fill=\"#fff\" d=\"M0 0h" + side + 'v' + side
                + "H0z\"/>"
                + "<path d=\"");
        for (int y = 0; y < size(); y++) {
            for (int x = 0; x < size(); x++) {
                if (dark(x, y)) {
                    svg.append('M')
                            .append(x + QUIET)
                            .append(' ')
                            .append(y + QUIET)
                            .append("h1v1h-1z");
                }
            }
        }
        return svg.append("\"/></svg>").toString();
    }

    /** For a screen without pictures: two rows of modules a line, in white on black whatever the terminal's own colours are. */
    public String words() {
        StringBuilder words = new StringBuilder();
        for (int y = -QUIET; y < size() + QUIET; y += 2) {
            words.append("\u001b[97;40m");
            for (int x = -QUIET; x < size() + QUIET; x++) {
                boolean upper = dark(x, y);
                boolean lower = dark(x, y + 1);
                words.append(upper ? (lower ? ' ' : '▄') : (lower ? '▀' : '█'));
            }
            words.append("\u001b[0m\n");
        }
        return words.toString();
    }
}
