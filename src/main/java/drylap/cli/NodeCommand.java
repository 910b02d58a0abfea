package drylap.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;

/** Starts a node of the application, which lives on after the command. */
abstract class NodeCommand implements Callable<Integer> {
    private final Application application;
    private final Application.Node node;
    private boolean started;

    @Mixin
    PortOption port = new PortOption();

    NodeCommand(Application application, Application.Node node) {
        this.application = application;
        this.node = node;
    }

    @Override
    public Integer call() {
        String[] settings = port.settings();
        started = true;
        application.start(node, settings);
        return ExitCodes.DONE;
    }

    boolean started() {
        return started;
    }
}
