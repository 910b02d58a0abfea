package drylap.hooks;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.context.annotation.Configuration;

/**
 * How other programs are told.
 *
 * @param inside whether hooks may lie in networks that are not public, and be reached without TLS: {@code allow}, or blank
 * @param connect how long to wait for a connection
 * @param whole how long to wait for an answer
 */
@ConfigurationProperties("drylap.hooks")
record HookSettings(
        @DefaultValue("") String inside,
        @DefaultValue("5s") Duration connect,
        @DefaultValue("10s") Duration whole) {
    HookSettings {
        if (!inside.isBlank() && !inside.equals("allow"))
            throw new IllegalArgumentException(
                    "drylap.hooks.inside (DRYLAP_HOOKS_INSIDE) is '%s'; accepted: allow, or nothing".formatted(inside));
    }

    boolean insideAllowed() {
        return inside.equals("allow");
    }

    @Configuration(proxyBeanMethods = false)
    @EnableConfigurationProperties(HookSettings.class)
    static class Enabled {}
}
