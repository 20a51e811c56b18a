package jackwork.app.bench;

import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.Json;
import jackwork.app.wire.Requests;
import jackwork.bench.BenchException;
import jackwork.drawing.QrCode;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Lets phones in from the page, and turns them out. One server at most; it ends with the page's own. */
public final class PhoneDesk {

    private final Supplier<Bench> bench;
    private final PhoneHost host;
    private final Supplier<List<InetAddress>> network;
    private PhoneHost.@Nullable Running running;
    private @Nullable URI link;

    /** @param network this machine's addresses in the house */
    public PhoneDesk(Workbench workbench, PhoneHost host, Supplier<List<InetAddress>> network) {
        this.bench = () -> Bench.in(workbench.folder());
        this.host = host;
        this.network = network;
    }

    public String viewJson() {
        return Json.compact(view());
    }

    synchronized PhoneView view() {
        PhoneHost.Running now = running;
        URI at = link;
        if (now == null || at == null) {
            return new PhoneView(false, "", "", List.of(), names(network.get()));
        }
        return new PhoneView(
                true,
                Objects.requireNonNullElse(at.getAuthority(), ""),
                now.open() ? at.toString() : "",
                now.guests().stream()
                        .map(guest -> new PhoneView.PhoneGuest(
                                guest.since().toString(), guest.until().toString()))
                        .toList(),
                List.of());
    }

    /**
     * Begins to serve, or makes another link where it is served already; the one before is void then.
     *
     * @param body a {@link ForPhone}
     */
    public synchronized String letInJson(String body) {
        ForPhone request = Requests.read(body, ForPhone.class);
        PhoneHost.Running now = running;
        if (now == null) {
            try {
                now = host.serve(new PhoneLog(bench.get(), Clock.systemUTC()), address(request.address()));
            } catch (UncheckedIOException e) {
                Throwable cause = Objects.requireNonNullElse(e.getCause(), e);
                throw new BenchException(String.valueOf(cause.getMessage()));
            }
            running = now;
        }
        link = now.link();
        return viewJson();
    }

    private InetAddress address(String wanted) {
        List<InetAddress> found = network.get();
        if (wanted.isEmpty() && found.size() == 1) {
            return found.get(0);
        }
        return found.stream()
                .filter(each -> each.getHostAddress().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new BenchException(
                        found.isEmpty()
                                ? "this machine is in no house network: join one, by cable or without, and try again"
                                : "this machine is in several networks; choose one of its addresses: "
                                        + String.join(", ", names(found))));
    }

    private static List<String> names(List<InetAddress> addresses) {
        return addresses.stream().map(InetAddress::getHostAddress).toList();
    }

    /** Turns everybody out. */
    public synchronized String stopJson() {
        close();
        return viewJson();
    }

    public synchronized void close() {
        PhoneHost.Running now = running;
        running = null;
        link = null;
        if (now != null) {
            now.stop();
        }
    }

    /** The link for a phone's camera. */
    public synchronized String codeSvg() {
        PhoneHost.Running now = running;
        URI at = link;
        if (now == null || at == null || !now.open()) {
            throw new BadRequestException("there is no link that would let a phone in");
        }
        return QrCode.of(at.toString()).svg();
    }
}
