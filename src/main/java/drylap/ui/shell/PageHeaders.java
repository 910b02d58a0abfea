package drylap.ui.shell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** What browsers are told of every answer of the page: whose scripts may run, who may frame it, that it is not kept. */
final class PageHeaders {
    static final String CONTENT_POLICY = "Content-Security-Policy";

    /** Styles stand in elements, as Vaadin writes them; pictures and fonts come from us, or are made by our own scripts. */
    private static final String POLICY = "default-src 'self'; base-uri 'self'; frame-ancestors 'none'; "
            + "object-src 'none'; img-src 'self' data: blob:; font-src 'self' data:; "
            + "style-src 'self' 'unsafe-inline'; script-src %s";

    /** A paper is shown by the browser's own viewer, which is a page with scripts and objects of its own. */
    private static final String OF_PAPERS = "frame-ancestors 'none'";

    private PageHeaders() {}

    /** @param scripts whose run, as a source list of CSP level 3 has it */
    static String policy(String scripts) {
        return POLICY.formatted(scripts);
    }

    static void tell(HeadersConfigurer<HttpSecurity> headers) {
        headers.addHeaderWriter(PageHeaders::policy)
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(
                        policy -> policy.policy("camera=(), microphone=(), geolocation=(), payment=(), usb=()"));
        headers.withObjectPostProcessor(AT_ONCE);
    }

    private static void policy(HttpServletRequest request, HttpServletResponse response) {
        boolean paper = request.getRequestURI().startsWith(request.getContextPath() + "/papers/");
        response.setHeader(CONTENT_POLICY, paper ? OF_PAPERS : policy("'self'"));
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
