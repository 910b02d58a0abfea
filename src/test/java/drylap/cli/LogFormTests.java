package drylap.cli;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;

class LogFormTests {
    @Command
    private static final class Some {}

    private final CommandLine line = new CommandLine(new Some());

    @Test
    void what_there_is_no_file_for_is_refused_before_anything_starts() {
        assertThatExceptionOfType(ParameterException.class)
                .isThrownBy(() -> LogForm.demand(line, "xml"))
                .withMessage("DRYLAP_LOG is \"xml\"; accepted: text, json, or not set: text");
        for (String form : new String[] {"text", "json", null})
            assertThatCode(() -> LogForm.demand(line, form)).doesNotThrowAnyException();
    }
}
