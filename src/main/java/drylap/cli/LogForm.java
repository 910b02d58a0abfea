package drylap.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** In which form a node writes its log: {@code logback.xml} takes in the file of that name. */
final class LogForm {
    static final String VARIABLE = "DRYLAP_LOG";
    private static final List<String> FORMS = List.of("text", "json");

    private LogForm() {}

    /** @throws ParameterException with what would be accepted */
    static void demand(CommandLine command, @Nullable String form) {
        if (form != null && !FORMS.contains(form))
            throw new ParameterException(
                    command,
                    "%s is \"%s\"; accepted: %s, or not set: text".formatted(VARIABLE, form, String.join(", ", FORMS)));
    }
}
