package drylap.api;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import tools.jackson.databind.json.JsonMapper;

/** Problem documents (RFC 9457) from where no controller answers. */
public final class ProblemAnswer {
    private static final Logger LOG = LoggerFactory.getLogger(ProblemAnswer.class);
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private ProblemAnswer() {}

    public static void write(HttpServletResponse response, HttpStatus status, String detail) throws IOException {
        if (status == HttpStatus.UNAUTHORIZED || status == HttpStatus.FORBIDDEN)
            LOG.warn("Refused at the door with {}: {}", status.value(), detail);
        response.setStatus(status.value());
        response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
        response.setCharacterEncoding("UTF-8");
        var problem = ProblemDetail.forStatusAndDetail(status, detail);
        RequestId.instance().ifPresent(problem::setInstance);
        JSON.writeValue(response.getWriter(), problem);
    }
}
