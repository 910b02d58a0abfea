package drylap.cli;

import drylap.takeoff.CutList;
import drylap.takeoff.VanList;
import java.io.PrintWriter;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** What window crews load, as a list for each van and day. */
final class TakeOffText {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private TakeOffText() {}

    static void print(List<VanList> days, PrintWriter out) {
        if (days.isEmpty()) out.println("No installs are planned that day for that crew.");
        days.forEach(day -> print(day, out));
        out.println(
                "Sizes are the trade's defaults or your own rules; the window maker's instructions come before them.");
    }

    private static void print(VanList day, PrintWriter out) {
        out.printf(
                "%s, %s: %s%n", day.crew(), DAY.format(day.date()), day.counts().words());
        out.printf("  strips: %s%n", day.lengths().words());
        for (CutList cut : day.cuts()) {
            out.printf("  %s%n", cut.saying().words());
            cut.rolls().forEach(roll -> out.printf("    %s%n", roll.saying().words()));
        }
        out.println();
    }
}
