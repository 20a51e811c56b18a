package jackwork.app.bench;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Where this machine can be reached from its own house. */
public final class HouseNetwork {

    private HouseNetwork() {}

    /** Its addresses in private networks (RFC 1918), none of a tunnel; none when it is in no such network. */
    public static List<InetAddress> addresses() {
        List<InetAddress> found = new ArrayList<>();
        try {
            for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (card.isUp() && !card.isLoopback() && !card.isPointToPoint()) {
                    Collections.list(card.getInetAddresses()).stream()
                            .filter(each -> each instanceof Inet4Address && each.isSiteLocalAddress())
                            .forEach(found::add);
                }
            }
        } catch (SocketException e) {
            // Whoever cannot be asked for its networks is in none.
            return List.of();
        }
        return found;
    }
}
