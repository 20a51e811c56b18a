package jackwork.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import org.eclipse.jetty.http.HttpStatus;
import org.jspecify.annotations.Nullable;

/**
 * Lets in whoever opened the page, and no other account of this machine: the address that is opened carries a key, and
 * whoever brings it gets a pass, a cookie that no script reads and no other site's page sends along. Both are drawn anew
 * whenever the program starts, and are kept in memory alone.
 */
final class Door {

    private static final int BYTES = 32;
    /** Name of the key in the address. */
    private static final String KEY = "key";

    private final String key = secret();
    private final String pass = secret();

    /** What follows the page's plain address in the one that is opened. */
    String query() {
        return "?" + KEY + "=" + key;
    }

    /** Gives the pass to whoever brings the key; the address that the browser goes on to has none in it. */
    void enter(Exchange exchange) {
        String brought = exchange.query(KEY);
        if (same(key, brought)) {
            exchange.setHeader("Set-Cookie", cookie(exchange) + "=" + pass + "; Path=/; HttpOnly; SameSite=Strict");
        }
        exchange.setStatus(HttpStatus.SEE_OTHER_303).setHeader("Location", "/");
    }

    static boolean isKnocking(Exchange exchange) {
        return exchange.query(KEY) != null;
    }

    boolean lets(Exchange exchange) {
        return same(pass, exchange.cookie(cookie(exchange)));
    }

    /** Cookies are sent to every port of a machine: each running Jackwork has one of its own. */
    private static String cookie(Exchange exchange) {
        return "jackwork-" + exchange.port();
    }

    static void refuse(Exchange exchange) {
        Answers.refuse(
                exchange,
                HttpStatus.UNAUTHORIZED_401,
                "this page was not opened by the address that Jackwork printed, or Jackwork was started again since",
                "Open the address that \"jackwork open\" printed, in this browser; then this page goes on.");
    }

    private static String secret() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** In the same time whatever differs. */
    private static boolean same(String one, @Nullable String other) {
        return other != null
                && MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
