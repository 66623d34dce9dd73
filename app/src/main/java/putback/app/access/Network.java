package putback.app.access;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How other machines of the garage reach the pages.
 *
 * @param names this machine's names and addresses, the first one for phones
 */
public record Network(List<String> names, Identity identity) {
    public static final String LOOPBACK = "127.0.0.1";

    public Network {
        names = List.copyOf(names);
    }

    /** Names that were given, then addresses and names that the machine has; it may call itself as well. */
    public static List<String> namesOfThisMachine(List<String> given) {
        Set<String> names = new LinkedHashSet<>();
        for (String name : given) {
            names.add(name.toLowerCase(Locale.ROOT));
        }
        names.addAll(addresses());
        try {
            String own = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
            if (isName(own)) {
                names.add(own);
                names.add(own.contains(".") ? own : own + ".local");
            }
        } catch (UnknownHostException nameless) {
            // its addresses are enough
        }
        names.add("localhost");
        names.add(LOOPBACK);
        return List.copyOf(names);
    }

    /** Whether it can be a machine's name or address. */
    public static boolean isName(String name) {
        return name.length() <= 253 && name.matches("[A-Za-z0-9]([A-Za-z0-9.-]*[A-Za-z0-9])?");
    }

    private static List<String> addresses() {
        List<String> four = new ArrayList<>();
        List<String> six = new ArrayList<>();
        try {
            NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                    .forEach(address -> {
                        String text = address.getHostAddress();
                        int scope = text.indexOf('%');
                        (address instanceof Inet6Address ? six : four).add(scope < 0 ? text : text.substring(0, scope));
                    });
        } catch (SocketException none) {
            return List.of();
        }
        four.sort(null);
        six.sort(null);
        four.addAll(six);
        return four;
    }

    /** As they stand in a request: an address of version 6 in brackets. */
    public Set<String> hosts() {
        Set<String> hosts = new LinkedHashSet<>();
        for (String name : names) {
            hosts.add(name.contains(":") ? "[" + name + "]" : name);
        }
        return hosts;
    }

    /** The one that a phone is to call. */
    public String forPhones() {
        String first = names.get(0);
        return first.contains(":") ? "[" + first + "]" : first;
    }
}
