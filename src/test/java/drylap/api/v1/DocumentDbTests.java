package drylap.api.v1;

import static org.assertj.core.api.Assertions.assertThat;

import drylap.ui.PageTest;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/** The document says what the controllers have, no more and no less: whoever changes one is told to change the other. */
@PageTest
class DocumentDbTests {
    @LocalServerPort
    private int port;

    @Autowired
    private Programs programs;

    @Autowired
    private List<RequestMappingHandlerMapping> mappings;

    @Test
    void every_address_with_its_parameters_is_in_the_document_and_nothing_else() {
        var document = programs.of("http://localhost:" + port, programs.people.scheduler())
                .document();

        assertThat(document.all().stream().map(one -> documented(document, one)).toList())
                .containsExactlyInAnyOrderElementsOf(mapped().toList());
    }

    private static String documented(Document document, Document.Operation one) {
        var names = new TreeSet<String>();
        document.parameters(one).stream()
                .filter(parameter -> !parameter.in().equals("header"))
                .forEach(parameter -> names.add(parameter.in() + " " + parameter.name()));
        return "%s %s %s".formatted(one.method(), one.path(), names);
    }

    private Stream<String> mapped() {
        return mappings.stream()
                .flatMap(mapping -> mapping.getHandlerMethods().entrySet().stream())
                .flatMap(one -> paths(one.getKey()).stream()
                        .filter(path -> path.startsWith("/api/v1/") && !path.endsWith("/**"))
                        .flatMap(path -> one.getKey().getMethodsCondition().getMethods().stream()
                                .map(method -> mapped(method, path, one.getValue()))));
    }

    private static Set<String> paths(RequestMappingInfo info) {
        return info.getPatternValues();
    }

    private static String mapped(RequestMethod method, String path, HandlerMethod handler) {
        var names = new TreeSet<String>();
        Arrays.stream(handler.getMethod().getParameters())
                .filter(parameter -> parameter.isAnnotationPresent(RequestParam.class))
                .forEach(parameter -> names.add("query " + parameter.getName()));
        Stream.of(path.split("/", -1))
                .filter(part -> part.startsWith("{"))
                .forEach(part -> names.add("path " + part.substring(1, part.length() - 1)));
        return "%s %s %s".formatted(method, path, names);
    }
}
