package drylap.api.v1;

import org.springframework.core.annotation.Order;
import org.springframework.http.ProblemDetail;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** Says what other programs are refused; the rest is said as to our own pages. */
@Order(V1Problems.FIRST)
@RestControllerAdvice(basePackageClasses = V1Problems.class)
final class V1Problems {
    static final int FIRST = -2;

    @ExceptionHandler
    ProblemDetail on(Refused trouble) {
        var problem = ProblemDetail.forStatusAndDetail(trouble.status(), String.valueOf(trouble.getMessage()));
        if (!trouble.errors().isEmpty()) problem.setProperty("errors", trouble.errors());
        return problem;
    }
}
