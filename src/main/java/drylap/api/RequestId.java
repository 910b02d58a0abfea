package drylap.api;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives each request an id of its own, which stands in every line that it writes to the log and in the problem that it is answered with, so that
 * whoever is told of the one finds the other. What the asker calls it is not taken: it could be anything.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
final class RequestId extends OncePerRequestFilter {
    static final String HEADER = "X-Request-Id";
    private static final String KEY = "request";

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String id = UUID.randomUUID().toString();
        response.setHeader(HEADER, id);
        MDC.put(KEY, id);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(KEY);
        }
    }

    /** The {@code instance} of a problem (RFC 9457, 3.1.5); none outside a request. */
    static Optional<URI> instance() {
        return Optional.ofNullable(MDC.get(KEY)).map(id -> URI.create("urn:uuid:" + id));
    }
}
