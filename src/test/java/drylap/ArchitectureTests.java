package drylap;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModule;
import org.springframework.modulith.core.ApplicationModules;
import org.springframework.modulith.core.DependencyDepth;

class ArchitectureTests {
    private static final Path DIAGRAM = Path.of("src/docs/modules.md");

    private final ApplicationModules modules = ApplicationModules.of(Drylap.class);

    @Test
    void modules_touch_only_what_they_say_they_touch() {
        modules.verify();
    }

    /** Run with {@code -Ddrylap.diagram=write} to draw it anew. */
    @Test
    void the_diagram_of_the_modules_is_current() throws IOException {
        String drawn = diagram();
        if ("write".equals(System.getProperty("drylap.diagram"))) Files.writeString(DIAGRAM, drawn);

        assertThat(DIAGRAM).hasContent(drawn);
    }

    private String diagram() {
        String arrows = modules.stream()
                .filter(module -> !module.isRootModule())
                .sorted(Comparator.comparing(ArchitectureTests::name))
                .flatMap(module -> module.getDependencies(modules, DependencyDepth.IMMEDIATE)
                        .uniqueModules()
                        .filter(other -> !other.isRootModule())
                        .map(ArchitectureTests::name)
                        .sorted()
                        .map(other -> "    %s --> %s\n".formatted(name(module), other)))
                .collect(Collectors.joining());
        return "# Modules\n\nWho calls whom, drawn from the code by `ArchitectureTests`.\n\n```mermaid\ngraph TD\n"
                + arrows + "```\n";
    }

    private static String name(ApplicationModule module) {
        return module.getIdentifier().toString();
    }
}
