package drylap.api.v1;

import drylap.api.ProblemAnswer;
import drylap.api.ReadRequest;
import drylap.resends.KeptAnswers;
import drylap.resends.Sending;
import drylap.security.ProgramPrincipal;
import drylap.security.SessionPrincipal;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.ContentCachingResponseWrapper;

/**
 * Makes each change in one transaction together with the answer to it: whoever sends the same key again, at once, later or after a crash, gets
 * the first answer, and nothing is done twice. An answer leaves the house once its transaction has ended.
 */
final class OneChange extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(OneChange.class);
    private static final Set<String> READS = Set.of("GET", "HEAD", "OPTIONS");
    /** A forecast file has 8 MiB at most. */
    private static final int MOST_BYTES = 8 << 20;
    /** A database that breaks off while it commits may have done it. */
    private static final String UNCERTAIN =
            "this did not come to an end here, and may have been done or not: send it again with the same "
                    + Change.KEY;

    private final KeptAnswers answers;
    private final TransactionTemplate transaction;
    private final SecurityContextHolderStrategy contexts;

    OneChange(KeptAnswers answers, TransactionTemplate transaction, SecurityContextHolderStrategy contexts) {
        this.answers = answers;
        this.transaction = transaction;
        this.contexts = contexts;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return READS.contains(request.getMethod());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws IOException {
        var against = Change.against(request);
        if (against.isPresent()) {
            ProblemAnswer.write(response, HttpStatus.BAD_REQUEST, against.get());
            return;
        }
        var body = ReadRequest.bodyUpTo(MOST_BYTES, request, response);
        if (body.isEmpty()) return;
        var change = new Change(
                request, body.get(), request.getHeader(Change.KEY), new ContentCachingResponseWrapper(response));
        try {
            answer(change, make(change, chain));
        } catch (RuntimeException failure) {
            fail(change, failure, HttpStatus.SERVICE_UNAVAILABLE, UNCERTAIN);
            change.answer().copyBodyToResponse();
        }
    }

    private void answer(Change change, Sending sending) throws IOException {
        switch (sending) {
            case Sending.First _ -> change.answer().copyBodyToResponse();
            case Sending.Again(var before) -> change.send(before);
            case Sending.AnotherRequest _ -> {
                change.answer().reset();
                ProblemAnswer.write(
                        change.answer(),
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        "this %s was sent before with another request; accepted: a new one for each change"
                                .formatted(Change.KEY));
                change.answer().copyBodyToResponse();
            }
        }
    }

    private Sending make(Change change, FilterChain chain) {
        Sending sending = transaction.execute(status -> {
            Sending entered = enter(change);
            if (!(entered instanceof Sending.First)) return entered;
            run(change, chain);
            if (change.done()) keep(change);
            else status.setRollbackOnly();
            return entered;
        });
        return sending instanceof Sending.First && change.refused() ? keepRefusal(change) : sending;
    }

    /** What was refused was taken back, its key with it; the refusal is kept for itself, unless the same was done meanwhile. */
    private Sending keepRefusal(Change change) {
        return transaction.execute(_ -> {
            Sending entered = enter(change);
            if (entered instanceof Sending.First) keep(change);
            return entered;
        });
    }

    private Sending enter(Change change) {
        return change.key() == null ? new Sending.First() : answers.enter(sender(), change.key(), change.hash());
    }

    private void keep(Change change) {
        if (change.key() != null) answers.keep(sender(), change.key(), change.kept());
    }

    private String sender() {
        var principal = Objects.requireNonNull(contexts.getContext().getAuthentication())
                .getPrincipal();
        return switch (principal) {
            case ProgramPrincipal program -> "token " + program.token();
            case SessionPrincipal session -> "person " + session.personId();
            case null, default -> throw new IllegalStateException("nobody sends this");
        };
    }

    private static void run(Change change, FilterChain chain) {
        try {
            chain.doFilter(new ReadRequest(change.request(), change.body()), change.answer());
        } catch (IOException | ServletException | RuntimeException failure) {
            fail(change, failure, HttpStatus.INTERNAL_SERVER_ERROR, "this went wrong here; nothing was changed");
        }
    }

    private static void fail(Change change, Exception failure, HttpStatus status, String words) {
        LOG.error("{} {} failed", change.request().getMethod(), change.request().getRequestURI(), failure);
        change.answer().reset();
        try {
            ProblemAnswer.write(change.answer(), status, words);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
