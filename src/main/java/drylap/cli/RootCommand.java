package drylap.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(
        name = "drylap",
        description = {
            "Plans window crews and the trades that follow them around the rain, so that no opening is left with "
                    + "unfinished laps.",
            "Without a command it starts the application and prints the address to open in a browser."
        },
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nThe command ends with:%n",
        exitCodeList = {
            "0:done",
            "1:a fault of the program; with check, a plan that breaks a rule",
            "2:bad input: the message says where, what, and what is accepted",
            "3:nothing could be planned"
        })
final class RootCommand implements Callable<Integer> {
    private final ServeCommand serve;

    RootCommand(ServeCommand serve) {
        this.serve = serve;
    }

    @Override
    public Integer call() {
        return serve.call();
    }
}
