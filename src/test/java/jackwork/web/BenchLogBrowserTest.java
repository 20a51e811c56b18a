package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import jackwork.bench.Kinds;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.ResourceLock;

/** Pieces, entries, files and a phone at the page Bench; and nothing lost on the way into the log. */
@Tag("browser")
class BenchLogBrowserTest extends BenchOnThePage {

    @Test
    void aPieceIsPlacedEmptiedAndSold() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("pieces", 1280);
        page.locator(".piece-serial").fill("MH-001");
        page.locator(".piece-batch").fill("spring");
        page.locator("form .apply").click();
        page.waitForSelector("[data-serial=MH-001]");
        happened(page, "placed");
        page.locator(".happening-who").fill("the hide by the sluice");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .where:has-text('placed at the hide by the sluice')");
        happened(page, "takings");
        page.locator(".taking-amount").fill("41,20");
        page.locator(".taking-counted").fill("Reed");
        page.locator(".taking-witnessed").fill("reed");
        page.locator(".taking-seal").fill("00123");
        page.locator(".piece-form .apply").click();
        page.waitForSelector(".told.away:has-text('expected two people')");
        happened(page, "takings");
        page.locator(".taking-amount").fill("41,20");
        page.locator(".taking-counted").fill("Reed");
        page.locator(".taking-witnessed").fill("Sedge");
        page.locator(".taking-seal").fill("00123");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .taken:has-text('41.20 EUR')");
        happened(page, "sold");
        page.locator(".happening-who").fill("a visitor");
        page.locator(".happening-amount").fill("62");
        page.locator(".piece-form .apply").click();
        page.waitForSelector("[data-serial=MH-001] .where:has-text('sold to a visitor')");
        happened(page, "spare");
        Download files =
                page.waitForDownload(() -> page.locator(".piece-form a").click());
        assertThat(files.suggestedFilename()).isEqualTo("heron-revision-1.zip");
        page.locator(".bench-design").selectOption("");
        page.waitForSelector(".all-takings");
        assertThat(page.locator(".totals").textContent()).contains("1 piece: 1 sold", "41.20 EUR", "Sold for 62 EUR");
        Browser.keep(page, "bench-pieces");
        assertNoComplaint();
    }

    @Test
    void anEntryIsStruckAndStaysToBeSeen() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 360);
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 1);
        go(page, "log");
        page.locator(".entries .strike").click();
        page.locator(".strike-why").fill("the coin was bent");
        page.locator(".entries .apply").click();
        page.waitForSelector(".entries .struck");
        assertThat(page.locator(".entries .why").textContent()).isEqualTo("struck: the coin was bent");
        assertThat(score().tries()).isZero();
        assertThat(bench.log().list(Kinds.TRIALS)).hasSize(1);
        Browser.keep(page, "bench-struck");
        assertNoComplaint();
    }

    @Test
    void csvGoesOutAndComesInWholeOrNotAtAll() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 1280);
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 1);
        go(page, "log");
        Download out = page.waitForDownload(
                () -> page.locator(".csv a", text("trials")).click());
        assertThat(out.suggestedFilename()).isEqualTo("trials.csv");
        String csv = Files.readString(out.path());
        bring(page, csv.replaceFirst("(?s)\r\n$", "\r\nk2,2026-03-02,heron,1,,EUR-2,ten,,\r\n"));
        page.waitForSelector(".csv .problem");
        assertThat(page.locator(".csv .problem").textContent()).contains("trials.csv:3:", "expected a whole number");
        assertThat(score().tries()).isEqualTo(1);
        bring(page, csv.replaceFirst("(?s)\r\n$", "\r\nk2,2026-03-02,heron,1,,EUR-2,10,lands=1,\r\n"));
        page.waitForSelector(".taken-in:has-text('1 entry came in; 1 were there already')");
        assertThat(score().tries()).isEqualTo(11);
        assertThat(browser().complaints()).allMatch(complaint -> complaint.contains("status of 422"));
    }

    private static void bring(Page page, String csv) {
        page.locator(".csv-file")
                .setInputFiles(new FilePayload("trials.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)));
    }

    /** Another page, a phone: what they log shows here by itself; turned out, the phone logs no more. */
    // Both classes let phones in at the usual port, which has room for one.
    @ResourceLock("the phones' usual port")
    @Test
    void aPhoneIsLetInAndWhatItLogsShows() throws Exception {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page desk = page("phone", 1280);
        desk.locator(".let-in").click();
        desk.waitForSelector(".phone[data-on=true] .code");
        desk.waitForCondition(
                () -> ((Number) desk.locator(".code").evaluate("code => code.naturalWidth")).intValue() > 0);
        Browser.keep(desk, "bench-phone");
        String link = desk.locator(".phone-link").textContent();
        assertThat(seen(desk.locator(".code").screenshot()))
                .as("as a camera reads it")
                .isEqualTo(link);
        Page phone = browser().open(link, 360, 740);
        phone.waitForSelector("#bench[data-state=try]");
        desk.waitForSelector(".phone[data-in='1']");
        assertThat(desk.locator(".code").count()).as("the link is used up").isZero();
        go(desk, "tries");
        phone.locator("button.worked").click();
        desk.waitForSelector(".all-coins:has-text('1 of 1')");
        // And the other way: what is tried at the desk is counted on the phone, when it is looked at again.
        desk.locator(".worked").click();
        desk.waitForSelector(".all-coins:has-text('2 of 2')");
        phone.waitForSelector(".count:has-text('2 of 2')");
        go(desk, "phone");
        desk.locator(".turn-out").click();
        desk.waitForSelector(".phone[data-on=false]");
        phone.locator("button.worked").click();
        phone.waitForSelector("#bench[data-waiting='1']");
        assertThat(score().tries()).isEqualTo(2);
        // Let in again, at the same address: what waited there is sent.
        desk.locator(".let-in").click();
        desk.waitForSelector(".phone-link");
        assertThat(desk.locator(".phone-link").textContent()).startsWith(link.replaceAll("#.*", ""));
    }

    /**
     * What a QR code in a picture says. One in some three hundred random codes is not found at one size, however clean: a camera
     * is held nearer or farther then.
     */
    private static String seen(byte[] png) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        for (double nearer : List.of(1.0, 1.3, 0.8, 1.7)) {
            int side = (int) (image.getWidth() * nearer);
            BufferedImage held = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
            Graphics2D shutter = held.createGraphics();
            shutter.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            shutter.drawImage(image, 0, 0, side, side, null);
            shutter.dispose();
            int[] pixels = held.getRGB(0, 0, side, side, null, 0, side);
            try {
                return new QRCodeReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))))
                        .getText();
            } catch (ReaderException e) {
                // Held otherwise.
            }
        }
        throw new AssertionError("read a QR code in the picture; found none");
    }

    /** Pressed while the connection is down, and with an answer gone astray: nothing is lost, nothing is logged twice. */
    @Test
    void nothingIsLostWhenTheConnectionDrops() throws IOException {
        bench.freeze(hut.resolve("heron"), "", DAY);
        Page page = page("tries", 360);
        page.context().setOffline(true);
        for (int i = 0; i < 3; i++) {
            page.locator(".worked").click();
        }
        page.waitForSelector(".bench[data-waiting='3'] .unsent:has-text('3 entries wait')");
        page.locator(".take-back").click();
        page.waitForSelector(".bench[data-waiting='2']");
        Browser.keep(page, "bench-offline");
        page.context().setOffline(false);
        page.waitForSelector(".bench[data-waiting='0']");
        page.waitForCondition(() -> score().tries() == 2);
        page.route("**/api/bench/log", route -> {
            route.fetch();
            route.abort();
        });
        page.locator(".worked").click();
        page.waitForCondition(() -> score().tries() == 3);
        page.waitForSelector(".bench[data-waiting='1']");
        page.unroute("**/api/bench/log");
        page.waitForSelector(".bench[data-waiting='0']");
        page.waitForSelector(".all-coins:has-text('3 of 3')");
        assertThat(score().tries()).isEqualTo(3);
    }
}
