package drylap.api;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.transaction.TransactionException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Whoever asks as a script does gets an answer that a script can read, also where something breaks before or behind the controllers. Else the page
 * for errors would answer, which sends whoever is not signed in there to the sign-in, and looks like a refusal.
 */
public final class BrokenAnswer extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(BrokenAnswer.class);
    private static final String AGAIN_AFTER_S = "5";

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException failure) {
            if (response.isCommitted()) throw failure;
            LOG.error("{} {} could not be answered", request.getMethod(), request.getRequestURI(), failure);
            response.reset();
            answer(response, failure);
        }
    }

    private static void answer(HttpServletResponse response, Throwable failure) throws IOException {
        if (!isOfTheDatabase(failure)) {
            ProblemAnswer.write(response, HttpStatus.INTERNAL_SERVER_ERROR, "this went wrong here");
            return;
        }
        response.setHeader(HttpHeaders.RETRY_AFTER, AGAIN_AFTER_S);
        ProblemAnswer.write(
                response,
                HttpStatus.SERVICE_UNAVAILABLE,
                "the database does not answer for the moment; what was to be changed may have been or not: send it again");
    }

    private static boolean isOfTheDatabase(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause())
            if (cause instanceof DataAccessException || cause instanceof TransactionException) return true;
        return false;
    }
}
