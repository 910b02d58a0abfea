package drylap.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

@Command(
        name = "serve",
        description = "Starts the application: week sheet, openings and hand-over for the office, the crews and the "
                + "follow-on trades. It keeps its data under ./data unless DRYLAP_DB_URL names a PostgreSQL.")
final class ServeCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    private final Application application;
    private boolean started;

    @Spec
    @Nullable
    CommandSpec spec;

    @Option(names = "--port", paramLabel = "N", description = "Port of the address (default: DRYLAP_PORT, or 8080).")
    @Nullable
    Integer port;

    ServeCommand(Application application) {
        this.application = application;
    }

    @Override
    public Integer call() {
        var settings = port == null ? new String[0] : new String[] {"--server.port=" + checked(port)};
        started = true;
        application.start(settings);
        return ExitCodes.DONE;
    }

    boolean started() {
        return started;
    }

    private int checked(int number) {
        if (number < 1 || number > HIGHEST_PORT)
            throw new ParameterException(
                    java.util.Objects.requireNonNull(spec).commandLine(),
                    "--port %d is no port; accepted: 1 to %d".formatted(number, HIGHEST_PORT));
        return number;
    }
}
