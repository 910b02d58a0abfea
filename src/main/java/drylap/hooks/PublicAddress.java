package drylap.hooks;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.util.Arrays;
import java.util.List;

/**
 * Whether an address belongs to the public network, so that nobody has Drylap ask the machines beside it. What is set aside for other uses
 * stands in IANA's registries of special-purpose addresses (RFC 6890; IPv4 and IPv6, as of 2024).
 */
final class PublicAddress {
    private static final List<Block> SET_ASIDE = List.of(
            Block.of("0.0.0.0", 8),
            Block.of("10.0.0.0", 8),
            Block.of("100.64.0.0", 10),
            Block.of("127.0.0.0", 8),
            Block.of("169.254.0.0", 16),
            Block.of("172.16.0.0", 12),
            Block.of("192.0.0.0", 24),
            Block.of("192.0.2.0", 24),
            Block.of("192.88.99.0", 24),
            Block.of("192.168.0.0", 16),
            Block.of("198.18.0.0", 15),
            Block.of("198.51.100.0", 24),
            Block.of("203.0.113.0", 24),
            // multicast and reserved, the broadcast address with it
            Block.of("224.0.0.0", 3));

    /** All that is public in IPv6 lies within 2000::/3; of that, what carries another address in it is not believed. */
    private static final Block GLOBAL_UNICAST = Block.of("2000::", 3);

    private static final List<Block> SET_ASIDE_OF_IT =
            List.of(Block.of("2001::", 23), Block.of("2001:db8::", 32), Block.of("2002::", 16), Block.of("3fff::", 20));

    private PublicAddress() {}

    static boolean is(InetAddress address) {
        return address instanceof Inet4Address
                ? SET_ASIDE.stream().noneMatch(block -> block.holds(address))
                : GLOBAL_UNICAST.holds(address) && SET_ASIDE_OF_IT.stream().noneMatch(block -> block.holds(address));
    }

    private record Block(byte[] start, int bits) {
        static Block of(String start, int bits) {
            // a literal is never asked of a name server
            return new Block(InetAddress.ofLiteral(start).getAddress(), bits);
        }

        boolean holds(InetAddress address) {
            byte[] other = address.getAddress();
            int whole = bits / Byte.SIZE;
            if (other.length != start.length || !Arrays.equals(start, 0, whole, other, 0, whole)) return false;
            int rest = bits % Byte.SIZE;
            return rest == 0 || ((start[whole] ^ other[whole]) & (0xFF << (Byte.SIZE - rest))) == 0;
        }
    }
}
