package drylap.cli;

import picocli.CommandLine.Command;

@Command(
        name = "serve",
        description = "Starts the application: week sheet, openings and hand-over for the office, the crews and the "
                + "follow-on trades. It keeps its data under ./data unless DRYLAP_DB_URL names a PostgreSQL. With "
                + "DRYLAP_WORK_THREADS=0 it only answers, and leaves work in the background to other nodes.")
final class ServeCommand extends NodeCommand {
    ServeCommand(Application application) {
        super(application, Application.Node.WEB);
    }
}
