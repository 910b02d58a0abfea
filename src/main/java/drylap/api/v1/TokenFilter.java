package drylap.api.v1;

import drylap.api.ProblemAnswer;
import drylap.security.ProgramPrincipal;
import drylap.tokens.ApiTokens;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.web.filter.OncePerRequestFilter;

/** Lets in whoever shows a token (RFC 6750, in the header only); one that opens nothing is refused, whatever session comes with it. */
final class TokenFilter extends OncePerRequestFilter {
    private static final String SCHEME = "bearer ";

    private final ApiTokens tokens;
    private final Budget budget;
    private final SecurityContextHolderStrategy contexts;

    TokenFilter(ApiTokens tokens, Budget budget, SecurityContextHolderStrategy contexts) {
        this.tokens = tokens;
        this.budget = budget;
        this.contexts = contexts;
    }

    static boolean showsToken(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.toLowerCase(Locale.ROOT).startsWith(SCHEME);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!showsToken(request)) {
            chain.doFilter(request, response);
            return;
        }
        String secret = request.getHeader(HttpHeaders.AUTHORIZATION)
                .substring(SCHEME.length())
                .strip();
        var program = tokens.open(secret);
        if (program.isEmpty()) refuse(response);
        else if (!budget.spend(program.get().token())) wait(response);
        else {
            enter(program.get());
            chain.doFilter(request, response);
        }
    }

    private void enter(ProgramPrincipal program) {
        var context = contexts.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(program, null, List.of()));
        contexts.setContext(context);
    }

    private static void refuse(HttpServletResponse response) throws IOException {
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer error=\"invalid_token\"");
        ProblemAnswer.write(response, HttpStatus.UNAUTHORIZED, "this token is unknown, was revoked or has expired");
    }

    private static void wait(HttpServletResponse response) throws IOException {
        response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(Budget.WITHIN.toSeconds()));
        ProblemAnswer.write(
                response,
                HttpStatus.TOO_MANY_REQUESTS,
                "more than %d requests with this token within %d s; ask again later"
                        .formatted(Budget.MOST, Budget.WITHIN.toSeconds()));
    }
}
