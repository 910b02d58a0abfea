package drylap.cli;

import drylap.planning.JobFolder;
import drylap.planning.Plan;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The plan that a command is pointed at, and the moment from which it was made. */
class PlanOptions {
    @Option(names = "--plan", required = true, paramLabel = "DIR", description = "The plan folder.")
    @Nullable
    Path plan;

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description = "The moment from which the plan was made, such as 2026-04-13T07:00-07:00 "
                    + "(default: the first shift's start).")
    @Nullable
    OffsetDateTime now;

    /** Nothing where it is refused; why is printed. */
    Optional<Plan> read(JobFolder folder, PrintWriter err) {
        return new PlansAtHand(err).read(Objects.requireNonNull(plan), folder, now == null ? null : now.toInstant());
    }
}
