package drylap.hooks;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edges of the blocks of IANA's registries of special-purpose addresses (RFC 6890), just inside and just outside. */
class PublicAddressTests {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.0.0.0",
                "10.0.0.0",
                "10.255.255.255",
                "100.64.0.1",
                "100.127.255.255",
                "127.0.0.1",
                "169.254.169.254",
                "172.16.0.1",
                "172.31.255.255",
                "192.0.0.8",
                "192.0.2.1",
                "192.168.1.1",
                "198.18.0.1",
                "198.19.255.255",
                "198.51.100.7",
                "203.0.113.9",
                "224.0.0.1",
                "240.0.0.1",
                "255.255.255.255",
                "::",
                "::1",
                "fe80::1",
                "fc00::1",
                "fd12:3456::1",
                "ff02::1",
                "2001:db8::1",
                "2002:7f00:1::1",
                "2001::1",
                "64:ff9b::7f00:1",
                "::ffff:127.0.0.1",
                "::ffff:10.0.0.1"
            })
    void what_is_set_aside_is_not_public(String address) throws UnknownHostException {
        assertThat(PublicAddress.is(InetAddress.getByName(address))).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.1.1.1",
                "9.255.255.255",
                "11.0.0.0",
                "100.63.255.255",
                "100.128.0.0",
                "126.255.255.255",
                "128.0.0.1",
                "169.253.255.255",
                "169.255.0.0",
                "172.15.255.255",
                "172.32.0.0",
                "192.0.1.1",
                "192.167.255.255",
                "192.169.0.0",
                "198.17.255.255",
                "198.20.0.0",
                "203.0.112.255",
                "223.255.255.255",
                "2600::1",
                "2a00:1450::1",
                "2001:200::1"
            })
    void what_is_not_set_aside_is(String address) throws UnknownHostException {
        assertThat(PublicAddress.is(InetAddress.getByName(address))).isTrue();
    }
}
