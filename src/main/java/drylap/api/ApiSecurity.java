package drylap.api;

import drylap.security.EndedSessions;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfTokenRequestAttributeHandler;
import org.springframework.security.web.session.DisableEncodeUrlFilter;

/**
 * The door for scripts of our own pages: the session of the page, and with every change the value of the cookie
 * {@code XSRF-TOKEN} in the header {@code X-XSRF-TOKEN}. Who may not gets a status and a problem document, never a page.
 */
@Configuration(proxyBeanMethods = false)
class ApiSecurity {
    @Bean
    @Order(1)
    SecurityFilterChain api(HttpSecurity http, EndedSessions sessions) throws Exception {
        return http.securityMatcher("/api/**")
                .authorizeHttpRequests(requests -> requests.anyRequest().authenticated())
                .csrf(csrf -> csrf.csrfTokenRepository(CookieCsrfTokenRepository.withHttpOnlyFalse())
                        .csrfTokenRequestHandler(new CsrfTokenRequestAttributeHandler()))
                .headers(DataHeaders::tell)
                .addFilterBefore(new SignedOutMeanwhile(sessions), AuthorizationFilter.class)
                .addFilterAfter(new SmallBodies(), AuthorizationFilter.class)
                // whoever signs in goes to a page, never to an answer that a script had asked for
                .requestCache(cache -> cache.disable())
                .addFilterBefore(new BrokenAnswer(), DisableEncodeUrlFilter.class)
                .exceptionHandling(refusals -> refusals.authenticationEntryPoint((_, response, _) ->
                                ProblemAnswer.write(response, HttpStatus.UNAUTHORIZED, "sign in first"))
                        .accessDeniedHandler((_, response, _) -> ProblemAnswer.write(
                                response, HttpStatus.FORBIDDEN, "not allowed, or the page is too old: load it anew")))
                .build();
    }

    /** A calendar's door is the secret in its address: nobody signs in, no session begins, and nothing is changed through it. */
    @Bean
    @Order(2)
    SecurityFilterChain calendars(HttpSecurity http) throws Exception {
        return withoutSession(http)
                .securityMatcher("/calendar/**")
                .authorizeHttpRequests(requests -> requests.requestMatchers(HttpMethod.GET, "/calendar/*")
                        .permitAll()
                        .requestMatchers(HttpMethod.HEAD, "/calendar/*")
                        .permitAll()
                        .anyRequest()
                        .denyAll())
                .build();
    }

    /** Service managers ask whether the node lives and is ready: two addresses, nothing else, and no session. */
    @Bean
    @Order(3)
    SecurityFilterChain health(HttpSecurity http) throws Exception {
        return withoutSession(http)
                .securityMatcher("/health/**")
                .authorizeHttpRequests(
                        requests -> requests.requestMatchers(HttpMethod.GET, "/health/live", "/health/ready")
                                .permitAll()
                                .anyRequest()
                                .denyAll())
                // nothing can be changed here
                .csrf(csrf -> csrf.disable())
                .build();
    }

    /** Numbers of the node: the address is open to a token that it looks at itself, or to a session that began elsewhere. */
    @Bean
    @Order(4)
    SecurityFilterChain metrics(HttpSecurity http, EndedSessions sessions) throws Exception {
        return http.securityMatcher("/metrics")
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.NEVER))
                .authorizeHttpRequests(requests -> requests.requestMatchers(HttpMethod.GET, "/metrics")
                        .permitAll()
                        .anyRequest()
                        .denyAll())
                .requestCache(cache -> cache.disable())
                .headers(DataHeaders::tell)
                .addFilterBefore(new SignedOutMeanwhile(sessions), AuthorizationFilter.class)
                .build();
    }

    /** Of those who need not sign in, and who find nothing where they have no business. */
    private static HttpSecurity withoutSession(HttpSecurity http) throws Exception {
        return http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .requestCache(cache -> cache.disable())
                .headers(DataHeaders::tell)
                .exceptionHandling(refusals -> refusals.authenticationEntryPoint((_, response, _) ->
                        ProblemAnswer.write(response, HttpStatus.NOT_FOUND, "there is nothing here for you")));
    }
}
