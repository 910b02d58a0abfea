package drylap.platform;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** What this process is called among the nodes of a database: a machine may run several. */
final class NodeName {
    static final String OURS = "%s/%d".formatted(host(), ProcessHandle.current().pid());

    private NodeName() {}

    private static String host() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return "node";
        }
    }
}
