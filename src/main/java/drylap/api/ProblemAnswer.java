package drylap.api;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import tools.jackson.databind.json.JsonMapper;

/** Problem documents (RFC 9457) from where no controller answers. */
public final class ProblemAnswer {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private ProblemAnswer() {}

    public static void write(HttpServletResponse response, HttpStatus status, String detail) throws IOException {
        response.setStatus(status.value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setCharacterEncoding("UTF-8");
        JSON.writeValue(response.getWriter(), ProblemDetail.forStatusAndDetail(status, detail));
    }
}
