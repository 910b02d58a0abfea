package drylap.ui.shell;

import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** What browsers are told of every answer of the page: whose scripts may run, who may frame it, that it is not kept. */
final class PageHeaders {
    static final String CONTENT_POLICY = "Content-Security-Policy";

    /** Styles stand in elements, as Vaadin writes them; pictures and fonts come from us, or are made by our own scripts. */
    private static final String POLICY = "default-src 'self'; base-uri 'self'; form-action 'self'; "
            + "frame-ancestors 'none'; object-src 'none'; img-src 'self' data: blob:; font-src 'self' data:; "
            + "style-src 'self' 'unsafe-inline'; script-src %s";

    private PageHeaders() {}

    /** @param scripts whose run, as a source list of CSP level 3 has it */
    static String policy(String scripts) {
        return POLICY.formatted(scripts);
    }

    static void tell(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(policy("'self'")))
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(
                        policy -> policy.policy("camera=(), microphone=(), geolocation=(), payment=(), usb=()"));
        headers.withObjectPostProcessor(AT_ONCE);
    }

    /** Vaadin's pages are answered by a forward, which ends the answer before headers that wait for its end are written. */
    private static final ObjectPostProcessor<HeaderWriterFilter> AT_ONCE = new ObjectPostProcessor<>() {
        @Override
        public <O extends HeaderWriterFilter> O postProcess(O filter) {
            filter.setShouldWriteHeadersEagerly(true);
            return filter;
        }
    };
}
