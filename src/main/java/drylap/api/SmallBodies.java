package drylap.api;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import org.springframework.web.filter.OncePerRequestFilter;

/** Reads no more of a body than the longest batch of marks needs, so that nobody fills the memory with one; photos have limits of their own. */
final class SmallBodies extends OncePerRequestFilter {
    /** 200 marks with notes of 2,000 letters, each letter written as JSON's six. */
    static final int MOST_BYTES = 4 << 20;

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var body = ReadRequest.bodyUpTo(MOST_BYTES, request, response);
        if (body.isPresent()) chain.doFilter(new ReadRequest(request, body.get()), response);
    }
}
