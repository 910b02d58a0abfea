package drylap.cli;

import drylap.assembly.Approach;
import drylap.assembly.Frame;
import drylap.assembly.Method;
import drylap.assembly.SecondLayer;
import drylap.assembly.Step;
import drylap.kernel.Task;
import drylap.kernel.Trade;
import drylap.windowschedule.LengthUnit;
import drylap.windowschedule.LetterMeaning;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The tree of commands behind {@code ./drylap}: the application, and the headless commands beside it. */
public final class Commands {
    /** Said wherever a dry hour could be mistaken for leave to climb. */
    static final String NOT_A_SAFETY_STATEMENT =
            "A dry hour is never a statement that work at height is safe: the competent person on site decides.";

    private final ServeCommand serve;
    private final WorkerCommand worker;
    private final CommandLine line;

    public Commands(Application application) {
        this(application, utf8(System.out), utf8(System.err));
    }

    Commands(Application application, PrintWriter out, PrintWriter err) {
        serve = new ServeCommand(application);
        line = new CommandLine(new RootCommand(serve));
        line.addSubcommand(serve);
        worker = new WorkerCommand(application);
        line.addSubcommand(worker);
        headless().forEach(line::addSubcommand);
        acceptCodes();
        line.setOut(out).setErr(err).setUsageHelpWidth(100);
        line.getSubcommands().values().forEach(command -> sayAtTheEnd(command.getCommandSpec()));
        sayAtTheEnd(line.getCommandSpec());
        line.setParameterExceptionHandler(Commands::refuse);
        line.setExecutionExceptionHandler(Commands::reportFault);
    }

    /** Every command that runs without the application: one class each, added here. */
    private static List<Callable<Integer>> headless() {
        return List.of(
                new PlanCommand(),
                new CheckCommand(),
                new ExplainCommand(),
                new WhatIfCommand(),
                new RiskCommand(),
                new OutlookCommand(),
                new TakeOffCommand(),
                new OpeningsCommand(),
                new TraceCommand(),
                new GenerateCommand(),
                new BackupCommand(),
                new RestoreCommand(),
                new HistoryCommand());
    }

    /** Runs what the words ask for and answers the exit code: 0 done, 2 bad input, 3 nothing could be planned. */
    public int run(String... args) {
        return line.execute(args);
    }

    /** Whether the words started the application, so that the process has to stay. */
    public boolean applicationStarted() {
        return serve.started() || worker.started();
    }

    private void acceptCodes() {
        line.registerConverter(Method.class, new CodeOf<>(Method.class, "method"));
        line.registerConverter(Approach.class, new CodeOf<>(Approach.class, "approach"));
        line.registerConverter(SecondLayer.class, new CodeOf<>(SecondLayer.class, "second layer"));
        line.registerConverter(Step.class, new CodeOf<>(Step.class, "step"));
        line.registerConverter(Task.class, new CodeOf<>(Task.class, "task"));
        line.registerConverter(Trade.class, new CodeOf<>(Trade.class, "trade"));
        line.registerConverter(Frame.class, new CodeOf<>(Frame.class, "frame"));
        line.registerConverter(LengthUnit.class, new CodeOf<>(LengthUnit.class, "unit"));
        line.registerConverter(LetterMeaning.class, new CodeOf<>(LetterMeaning.class, "meaning"));
    }

    private static void sayAtTheEnd(CommandSpec spec) {
        spec.usageMessage().footer("", NOT_A_SAFETY_STATEMENT);
        spec.mixinStandardHelpOptions(true);
        spec.versionProvider(new Version());
    }

    private static int refuse(ParameterException refusal, String[] args) {
        var command = refusal.getCommandLine();
        var err = command.getErr();
        err.println(refusal.getMessage());
        UnmatchedArgumentException.printSuggestions(refusal, err);
        err.println("See '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCodes.BAD_INPUT;
    }

    private static int reportFault(Exception fault, CommandLine command, ParseResult words) {
        fault.printStackTrace(command.getErr());
        return ExitCodes.FAULT;
    }

    private static PrintWriter utf8(java.io.PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
