package jackwork.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
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
    void enter(Context context) {
        String brought = context.queryParam(KEY);
        if (same(key, brought)) {
            context.header("Set-Cookie", cookie(context) + "=" + pass + "; Path=/; HttpOnly; SameSite=Strict");
        }
        context.status(HttpStatus.SEE_OTHER).header("Location", "/");
    }

    static boolean isKnocking(Context context) {
        return context.queryParam(KEY) != null;
    }

    boolean lets(Context context) {
        return same(pass, context.cookie(cookie(context)));
    }

    /** Cookies are sent to every port of a machine: each running Jackwork has one of its own. */
    private static String cookie(Context context) {
        return "jackwork-" + context.req().getLocalPort();
    }

    static void refuse(Context context) {
        Answers.refuse(
                context,
                HttpStatus.UNAUTHORIZED,
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
