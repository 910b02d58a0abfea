package drylap.cli;

import picocli.CommandLine.Command;

@Command(
        name = "worker",
        description =
                "Starts a node without a page that does work in the background, planning above all, for the nodes "
                        + "that share the PostgreSQL of DRYLAP_DB_URL. On its port it answers /health/live and /health/ready only.")
final class WorkerCommand extends NodeCommand {
    WorkerCommand(Application application) {
        super(application, Application.Node.WORKER);
    }
}
