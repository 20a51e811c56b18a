package jackwork.web;

import jackwork.app.bench.PhoneHost;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Who may log: a link's token lets one in, once; a session lasts for a working day. Kept in memory alone. */
final class Sessions {

    private static final Duration LINK = Duration.ofMinutes(10);
    private static final Duration SESSION = Duration.ofHours(12);
    private static final int BYTES = 32;

    private final SecureRandom random = new SecureRandom();
    private final Clock clock;
    private final Map<String, PhoneHost.Guest> guests = new HashMap<>();
    private @Nullable String token;
    private Instant tokenBegins = Instant.MAX;
    private Instant tokenEnds = Instant.MIN;

    Sessions(Clock clock) {
        this.clock = clock;
    }

    /** A new token; the one before is void. */
    synchronized String invite() {
        String made = secret();
        token = made;
        tokenBegins = clock.instant();
        tokenEnds = tokenBegins.plus(LINK);
        return made;
    }

    /** A session for whoever brings the token first and in time. */
    synchronized Optional<String> enter(String brought) {
        String wanted = token;
        if (wanted == null || !same(wanted, brought) || !isTime()) {
            return Optional.empty();
        }
        token = null;
        String session = secret();
        Instant now = clock.instant();
        guests.put(session, new PhoneHost.Guest(now, now.plus(SESSION)));
        return Optional.of(session);
    }

    synchronized boolean holds(@Nullable String session) {
        forgetOld();
        return session != null && guests.containsKey(session);
    }

    /** Whether the token still lets one in. */
    synchronized boolean open() {
        return token != null && isTime();
    }

    /** A clock that was set back makes no link live longer. */
    private boolean isTime() {
        Instant now = clock.instant();
        return !now.isBefore(tokenBegins) && !now.isAfter(tokenEnds);
    }

    /** Who is in, the longest first. */
    synchronized List<PhoneHost.Guest> guests() {
        forgetOld();
        return guests.values().stream()
                .sorted(Comparator.comparing(PhoneHost.Guest::since))
                .toList();
    }

    private void forgetOld() {
        Instant now = clock.instant();
        guests.values().removeIf(guest -> now.isAfter(guest.until()) || now.isBefore(guest.since()));
    }

    private String secret() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** In the same time whatever differs. */
    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
