package drylap.api;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.transaction.CannotCreateTransactionException;

class BrokenAnswerTests {
    static MockHttpServletResponse answered(FilterChain chain) throws Exception {
        var response = new MockHttpServletResponse();
        new BrokenAnswer().doFilter(new MockHttpServletRequest("POST", "/api/marks"), response, chain);
        return response;
    }

    @Test
    void a_database_that_breaks_off_is_told_as_something_to_send_again() throws Exception {
        for (RuntimeException failure : new RuntimeException[] {
            new DataAccessResourceFailureException("disk full"), new CannotCreateTransactionException("no connection")
        }) {
            var response = answered((_, _) -> {
                throw new ServletException("Request processing failed", failure);
            });
            assertThat(response.getStatus()).isEqualTo(503);
            assertThat(response.getHeader("Retry-After")).isEqualTo("5");
            assertThat(response.getContentType()).startsWith("application/problem+json");
            assertThat(response.getContentAsString()).contains("may have been or not", "send it again");
        }
    }

    @Test
    void what_else_goes_wrong_is_a_problem_too_and_no_page() throws Exception {
        var response = answered((_, given) -> {
            given.getWriter().write("half an ans");
            throw new IllegalStateException("a fault of ours");
        });
        assertThat(response.getStatus()).isEqualTo(500);
        assertThat(response.getContentAsString())
                .contains("this went wrong here")
                .doesNotContain("half", "ours");
    }

    @Test
    void an_answer_is_left_as_it_is() throws Exception {
        var response = answered((_, given) -> given.getWriter().write("well"));
        assertThat(response.getContentAsString()).isEqualTo("well");
    }
}
