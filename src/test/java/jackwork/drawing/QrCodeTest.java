package jackwork.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a terminal shows is read back, as a camera would. */
class QrCodeTest {

    private static final int PIXELS = 4;

    @Test
    void readBackFromTheTerminal() throws Exception {
        String link = "http://192.168.178.20:45123/#nWlHk2x3ZQ8eVn0xw1v9m3J7yq4Tt5aUu6RrLlKkPpQ";
        List<String> lines = QrCode.of(link)
                .words()
                .replaceAll("\u001b\\[[0-9;]*m", "")
                .lines()
                .toList();
        int width = lines.get(0).length();
        int[] pixels = new int[width * PIXELS * lines.size() * 2 * PIXELS];
        Arrays.fill(pixels, 0xFFFFFF);
        for (int row = 0; row < lines.size(); row++) {
            assertThat(lines.get(row)).hasSize(width);
            for (int x = 0; x < width; x++) {
                char c = lines.get(row).charAt(x);
                paint(pixels, width, x, 2 * row, c == ' ' || c == '▄');
                paint(pixels, width, x, 2 * row + 1, c == ' ' || c == '▀');
            }
        }
        LuminanceSource source = new RGBLuminanceSource(width * PIXELS, lines.size() * 2 * PIXELS, pixels);
        var read = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(source)));
        assertThat(read.getBarcodeFormat()).isEqualTo(BarcodeFormat.QR_CODE);
        assertThat(read.getText()).isEqualTo(link);
    }

    private static void paint(int[] pixels, int width, int x, int y, boolean dark) {
        for (int dy = 0; dy < PIXELS; dy++) {
            for (int dx = 0; dx < PIXELS; dx++) {
                pixels[(y * PIXELS + dy) * width * PIXELS + x * PIXELS + dx] = dark ? 0 : 0xFFFFFF;
            }
        }
    }
}
