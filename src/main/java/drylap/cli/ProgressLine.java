package drylap.cli;

import drylap.planning.PlanProgress;
import drylap.planning.PlanRequest;
import java.io.Console;
import java.io.PrintWriter;
import java.util.function.Consumer;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A bar that fills with time or moves and shows the falling cost; on a terminal only, quiet when piped. */
final class ProgressLine implements Consumer<PlanProgress>, AutoCloseable {
    private final @Nullable ProgressBar bar;
    private final PrintWriter err;
    private final boolean byMoves;
    private boolean first = true;

    ProgressLine(PrintWriter err, PlanRequest request) {
        this.err = err;
        byMoves = request.time() == null;
        Console console = System.console();
        bar = console != null && console.isTerminal() ? bar(request) : null;
    }

    private static ProgressBar bar(PlanRequest request) {
        long most = request.time() != null ? request.time().toMillis() : request.moves() == null ? -1 : request.moves();
        return new ProgressBarBuilder()
                .setTaskName("Planning")
                .setInitialMax(most)
                .setUpdateIntervalMillis(200)
                .setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new ConsoleProgressBarConsumer(System.err))
                .hideEta()
                .build();
    }

    @Override
    public void accept(PlanProgress progress) {
        if (first) {
            first = false;
            err.printf(
                    "First legal plan after %d ms: cost %,d, %d tasks planned, %d not planned.%n",
                    progress.elapsed().toMillis(), progress.soft(), progress.planned(), progress.unplanned());
        }
        if (bar == null) return;
        bar.stepTo(byMoves ? progress.moves() : progress.elapsed().toMillis());
        bar.setExtraMessage(" cost %,d, %d not planned".formatted(progress.soft(), progress.unplanned()));
    }

    @Override
    public void close() {
        if (bar != null) bar.close();
    }
}
