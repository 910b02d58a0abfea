package drylap.api;

import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;

/** What browsers are told of answers that are data: never to be shown as a page, nor to run anything of them. */
public final class DataHeaders {
    private DataHeaders() {}

    /** Beside what Spring Security tells by itself; an answer that names its own keeps it. */
    public static void tell(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'; sandbox"))
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
                .addHeaderWriter(new StaticHeadersWriter("Content-Disposition", "attachment; filename=\"api.json\""));
    }
}
