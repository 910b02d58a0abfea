package drylap.hooks;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SignatureTests {
    /** RFC 4231, test case 2. */
    @Test
    void it_is_hmac_sha_256() {
        assertThat(Signature.hex("Jefe", "what do ya want for nothing?"))
                .isEqualTo("5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843");
    }

    @Test
    void it_binds_the_moment_to_the_body() {
        String signed = Signature.of("secret", "1760000000", "{}");

        assertThat(signed).isEqualTo(Signature.hex("secret", "1760000000.{}"));
        assertThat(signed).isNotEqualTo(Signature.of("secret", "1760000001", "{}"));
        assertThat(signed).isNotEqualTo(Signature.of("secret", "1760000000", "{ }"));
    }
}
