package jackwork.cli;

import jackwork.app.bench.HouseNetwork;
import jackwork.app.bench.PhoneHost;
import jackwork.app.bench.PhoneLog;
import jackwork.drawing.QrCode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.time.Clock;
import java.util.List;
import java.util.ServiceLoader;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jackwork bench phone}. */
@Command(name = "phone", description = "Lets one phone in this house's network log, by a link that works once.")
final class BenchPhone extends Subcommand {

    @Option(
            names = "--address",
            paramLabel = "IP",
            description = "of this machine, at which the phone reaches it; found when absent")
    private @Nullable String address;

    @Option(names = "--port", paramLabel = "P", description = "8474 when absent, or any free one")
    private int port;

    @Option(names = "--plain", description = "only the link, no code to point a camera at")
    private boolean plain;

    @Mixin
    private WorkshopOption workshop = new WorkshopOption();

    @Override
    public Integer call() throws IOException {
        Port.checked(port);
        PhoneLog log = new PhoneLog(workshop.bench(), Clock.systemUTC());
        InetAddress here = here();
        PhoneHost host = ServiceLoader.load(PhoneHost.class)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("this build of Jackwork has no phone's page in it"));
        PhoneHost.Running server = port == 0 ? host.serve(log, here) : host.serve(log, here, port);
        Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
        System.err.println("Whoever listens in this network can read along; use it in your own. Only logging is"
                + " possible from there. Stop with Ctrl-C.");
        do {
            URI link = server.link();
            if (!plain) {
                System.err.println(QrCode.of(link.toString()).words());
            }
            System.out.println(link);
            if (System.out.checkError()) {
                server.stop();
                return Outcome.FINE;
            }
            System.err.println("It lets one phone in, within ten minutes. Enter makes another.");
        } while (System.in.read() >= 0);
        // Without a keyboard it serves on, for the phone that is in.
        try {
            Thread.sleep(Long.MAX_VALUE);
        } catch (InterruptedException e) {
            server.stop();
        }
        return Outcome.FINE;
    }

    private InetAddress here() throws IOException {
        if (address != null) {
            try {
                return InetAddress.getByName(address);
            } catch (UnknownHostException e) {
                throw new BadInputException("--address reads \"" + address + "\", expected one as in 192.168.1.20");
            }
        }
        List<InetAddress> found = HouseNetwork.addresses();
        if (found.size() != 1) {
            throw new BadInputException((found.isEmpty()
                            ? "this machine is in no house network"
                            : "this machine is in several networks, at "
                                    + String.join(
                                            ", ",
                                            found.stream()
                                                    .map(InetAddress::getHostAddress)
                                                    .toList()))
                    + "; say --address");
        }
        return found.get(0);
    }
}
