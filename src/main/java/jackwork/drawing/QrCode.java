package jackwork.drawing;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A text as a QR code (ISO/IEC 18004), for a screen without pictures. */
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

    /** Two rows of modules a line, in white on black whatever the terminal's own colours are. */
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
