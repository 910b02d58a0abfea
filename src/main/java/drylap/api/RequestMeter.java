package drylap.api;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerMapping;

/** Times requests by route, never by address: addresses hold names of openings, and secrets of calendars. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
final class RequestMeter extends OncePerRequestFilter {
    private static final Set<String> METHODS = Set.of("GET", "HEAD", "POST", "PUT", "DELETE");
    /** What Vaadin's client asks for, by its parameter {@code v-r}. */
    private static final Pattern ASKED = Pattern.compile("(?:^|&)v-r=(\\w+)");

    private static final Set<String> OF_PAGES = Set.of("init", "uidl", "heartbeat", "push");

    private static final Duration[] LIMITS = {
        Duration.ofMillis(10),
        Duration.ofMillis(50),
        Duration.ofMillis(200),
        Duration.ofSeconds(1),
        Duration.ofSeconds(5),
        Duration.ofSeconds(20)
    };

    private final MeterRegistry meters;

    RequestMeter(MeterRegistry meters) {
        this.meters = meters;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var begun = Timer.start(meters);
        boolean answered = false;
        try {
            chain.doFilter(request, response);
            answered = true;
        } finally {
            begun.stop(timer(request, answered ? response.getStatus() : HttpServletResponse.SC_INTERNAL_SERVER_ERROR));
        }
    }

    private Timer timer(HttpServletRequest request, int status) {
        return Timer.builder("drylap.requests")
                .tag("method", METHODS.contains(request.getMethod()) ? request.getMethod() : "other")
                .tag("route", route(request))
                .tag("status", Integer.toString(status))
                .serviceLevelObjectives(LIMITS)
                .register(meters);
    }

    private static String route(HttpServletRequest request) {
        // not by its parameters: reading those would read the body of a form
        String query = request.getQueryString();
        var asked = query == null ? null : ASKED.matcher(query);
        if (asked != null && asked.find()) return OF_PAGES.contains(asked.group(1)) ? "page " + asked.group(1) : "page";
        return request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE) instanceof String pattern
                ? pattern
                : "other";
    }
}
