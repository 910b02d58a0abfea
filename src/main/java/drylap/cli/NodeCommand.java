package drylap.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Starts a node of the application, which lives on after the command. */
abstract class NodeCommand implements Callable<Integer> {
    private final Application application;
    private final Application.Node node;
    private boolean started;

    @Spec
    @Nullable
    CommandSpec command;

    @Mixin
    PortOption port = new PortOption();

    NodeCommand(Application application, Application.Node node) {
        this.application = application;
        this.node = node;
    }

    @Override
    public Integer call() {
        LogForm.demand(Objects.requireNonNull(command).commandLine(), System.getenv(LogForm.VARIABLE));
        String[] settings = port.settings();
        started = true;
        application.start(node, settings);
        return ExitCodes.DONE;
    }

    boolean started() {
        return started;
    }
}
