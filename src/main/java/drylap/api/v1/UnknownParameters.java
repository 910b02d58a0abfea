package drylap.api.v1;

import drylap.api.BadField;
import drylap.api.BadFields;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.util.UriComponentsBuilder;

/** Refuses parameters that an address does not have, or has once only: a filter that is passed over would show too much. */
final class UnknownParameters implements HandlerInterceptor {
    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (!(handler instanceof HandlerMethod method) || request.getQueryString() == null) return true;
        List<String> known = known(method);
        List<BadField> bad = new ArrayList<>();
        UriComponentsBuilder.newInstance()
                .query(request.getQueryString())
                .build()
                .getQueryParams()
                .forEach((name, values) -> {
                    if (!known.contains(name))
                        bad.add(new BadField(name, "is no parameter here; accepted: " + said(known)));
                    else if (values.size() > 1)
                        bad.add(new BadField(name, "is given %d times".formatted(values.size())));
                });
        if (!bad.isEmpty()) throw new BadFields(bad);
        return true;
    }

    private static String said(List<String> known) {
        return known.isEmpty() ? "none" : String.join(", ", known);
    }

    private static List<String> known(HandlerMethod method) {
        return Arrays.stream(method.getMethod().getParameters())
                .filter(parameter -> parameter.isAnnotationPresent(RequestParam.class))
                .map(parameter -> Objects.requireNonNull(parameter.getName()))
                .toList();
    }

    /** For the addresses of other programs only. */
    @Configuration(proxyBeanMethods = false)
    static class OnV1 implements WebMvcConfigurer {
        @Override
        public void addInterceptors(InterceptorRegistry registry) {
            registry.addInterceptor(new UnknownParameters()).addPathPatterns("/api/v1/**");
        }
    }
}
