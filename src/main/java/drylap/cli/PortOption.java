package drylap.cli;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** On which port a node answers. */
final class PortOption {
    private static final int HIGHEST_PORT = 65_535;

    @Spec(Spec.Target.MIXEE)
    @Nullable
    CommandSpec command;

    @Option(names = "--port", paramLabel = "N", description = "Port of the address (default: DRYLAP_PORT, or 8080).")
    @Nullable
    Integer port;

    /** As settings of the application; none: as the environment has it. */
    String[] settings() {
        return port == null ? new String[0] : new String[] {"--server.port=" + checked(port)};
    }

    private int checked(int number) {
        if (number < 1 || number > HIGHEST_PORT)
            throw new ParameterException(
                    Objects.requireNonNull(command).commandLine(),
                    "--port %d is no port; accepted: 1 to %d".formatted(number, HIGHEST_PORT));
        return number;
    }
}
