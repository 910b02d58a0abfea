package drylap.api;

import drylap.progress.Photos;
import drylap.security.NotAllowed;
import drylap.security.SignedIn;
import drylap.speech.Saying;
import drylap.speech.Speech;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;

/** Says what went wrong as RFC 9457 has it; where fields are to blame, each is named under {@code errors}. */
@Order(Problems.FIRST)
@RestControllerAdvice(basePackageClasses = Problems.class)
final class Problems {
    /** Before that of Spring Boot, which answers what is left. */
    static final int FIRST = -1;

    private final SignedIn signedIn;

    Problems(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @ExceptionHandler
    ProblemDetail on(BadFields trouble) {
        return bad(Saying.of("The request cannot be read, and nothing of it was done."), trouble.fields());
    }

    @ExceptionHandler
    ProblemDetail on(HttpMessageNotReadableException trouble) {
        return bad(Saying.of("The request is no JSON."), List.of());
    }

    @ExceptionHandler
    ProblemDetail on(MissingServletRequestPartException trouble) {
        return bad(
                Saying.of("The request cannot be read, and nothing of it was done."),
                List.of(new BadField("photo." + trouble.getRequestPartName(), "is missing; accepted: a file")));
    }

    @ExceptionHandler
    ProblemDetail on(PhotoRefused trouble) {
        return problem(
                switch (trouble.refused().why()) {
                    case TOO_LARGE -> HttpStatus.CONTENT_TOO_LARGE;
                    case NO_PHOTO -> HttpStatus.UNSUPPORTED_MEDIA_TYPE;
                    case KEY_TAKEN -> HttpStatus.CONFLICT;
                    case MANY_TODAY -> HttpStatus.TOO_MANY_REQUESTS;
                },
                trouble.refused().saying());
    }

    @ExceptionHandler
    ProblemDetail on(MaxUploadSizeExceededException trouble) {
        return problem(
                HttpStatus.CONTENT_TOO_LARGE,
                Saying.of("The photo is too large; accepted: up to {0} MB", Photos.MOST_BYTES >> 20));
    }

    @ExceptionHandler
    ProblemDetail on(NotAllowed trouble) {
        return problem(HttpStatus.FORBIDDEN, Saying.of("This is not yours, or there is no such thing."));
    }

    @ExceptionHandler
    ProblemDetail on(NotFound trouble) {
        return problem(HttpStatus.NOT_FOUND, Saying.of("There is nothing here for you."));
    }

    private ProblemDetail bad(Saying detail, List<BadField> fields) {
        var problem = problem(HttpStatus.BAD_REQUEST, detail);
        problem.setProperty("errors", fields);
        return problem;
    }

    /** For the person who asks, in their language; what stands under {@code errors} is for programs, and English. */
    private ProblemDetail problem(HttpStatus status, Saying detail) {
        return ProblemDetail.forStatusAndDetail(status, new Speech(signedIn.reading()).it(detail));
    }
}
