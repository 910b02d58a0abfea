package drylap.api.v1;

import drylap.api.BrokenAnswer;
import drylap.api.DataHeaders;
import drylap.api.ProblemAnswer;
import drylap.api.SignedOutMeanwhile;
import drylap.resends.KeptAnswers;
import drylap.security.EndedSessions;
import drylap.tokens.ApiTokens;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.csrf.CsrfTokenRequestAttributeHandler;
import org.springframework.security.web.session.DisableEncodeUrlFilter;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * The door for other programs: a token, or the session of somebody who is signed in on the page; the latter sends what pages must send with a
 * change. Nobody's session begins here.
 */
@Configuration(proxyBeanMethods = false)
class V1Security {
    @Bean
    @Order(0)
    SecurityFilterChain v1(
            HttpSecurity http,
            ApiTokens tokens,
            KeptAnswers answers,
            TransactionTemplate transaction,
            EndedSessions sessions,
            ObjectProvider<SecurityContextHolderStrategy> strategies)
            throws Exception {
        var contexts = strategies.getIfAvailable(SecurityContextHolder::getContextHolderStrategy);
        return http.securityMatcher("/api/v1/**")
                .authorizeHttpRequests(requests -> requests.anyRequest().authenticated())
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.NEVER))
                .csrf(csrf -> csrf.csrfTokenRepository(CookieCsrfTokenRepository.withHttpOnlyFalse())
                        .csrfTokenRequestHandler(new CsrfTokenRequestAttributeHandler())
                        // a page of another site cannot make a browser send this header
                        .ignoringRequestMatchers(TokenFilter::showsToken))
                .requestCache(cache -> cache.disable())
                .addFilterBefore(new BrokenAnswer(), DisableEncodeUrlFilter.class)
                .headers(DataHeaders::tell)
                .addFilterBefore(new SignedOutMeanwhile(sessions), AuthorizationFilter.class)
                .addFilterBefore(new TokenFilter(tokens, new Budget(), contexts), CsrfFilter.class)
                .addFilterAfter(new OneChange(answers, transaction, contexts), AuthorizationFilter.class)
                .exceptionHandling(refusals -> refusals.authenticationEntryPoint((_, response, _) -> {
                            response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
                            ProblemAnswer.write(response, HttpStatus.UNAUTHORIZED, "show a token, or sign in first");
                        })
                        .accessDeniedHandler((_, response, _) -> ProblemAnswer.write(
                                response, HttpStatus.FORBIDDEN, "not allowed, or the page is too old: load it anew")))
                .build();
    }
}
