package drylap.cli;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Of what a take-off is wanted: of a plan's days, or of a site. */
final class TakeOffOf {
    @ArgGroup(exclusive = false, heading = "%nOf a plan's days:%n")
    @Nullable
    Days days;

    @ArgGroup(exclusive = false, heading = "%nOf a site:%n")
    @Nullable
    OneSite site;

    static final class Days extends PlanOptions {
        @Option(
                names = "--crew",
                paramLabel = "CREW",
                description = "Of this crew alone (default: of every window crew).")
        @Nullable
        String crew;

        @Option(names = "--date", paramLabel = "DATE", description = "Of this day alone (default: of every day).")
        @Nullable
        LocalDate date;

        @Option(names = "--together", description = "What all crews of a day take together, cut as one.")
        boolean together;
    }

    static final class OneSite {
        @Option(
                names = "--site",
                required = true,
                paramLabel = "SITE",
                description = "What is left to put on at this site, planned or not.")
        @Nullable
        String site;

        @Option(names = "--whole", description = "All of its walls, as if nothing were on yet.")
        boolean whole;
    }
}
